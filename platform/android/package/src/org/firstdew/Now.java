package org.firstdew;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** The only way in which the time of day enters this side; tests put another clock in. */
final class Now {
    static Clock clock = Clock.systemUTC();

    private Now() {}

    static long millis() {
        return clock.millis();
    }

    /** What the person's clock shows, in the zone the phone is set to. */
    static LocalDateTime local() {
        return LocalDateTime.ofInstant(clock.instant(), ZoneId.systemDefault());
    }
}
