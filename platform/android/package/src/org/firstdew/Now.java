package org.firstdew;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** The only source of time in the Java part. Tests replace the clock. */
final class Now {
    static Clock clock = Clock.systemUTC();

    private Now() {}

    static long millis() {
        return clock.millis();
    }

    /** The local time in the zone of the phone. */
    static LocalDateTime local() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneId.systemDefault());
    }
}
