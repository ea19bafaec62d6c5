package org.firstdew;

import android.app.AlarmManager;
import android.app.PendingIntent;
import android.content.Context;
import android.content.Intent;
import android.net.Uri;
import android.os.Build;

import java.time.Duration;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Keeps the system's alarms and notifications in step with the reminders wanted. Every method may be called twice. */
final class Reminders {
    /** A reminder that was put off returns after this time (our own choice). */
    static final Duration LATER = Duration.ofHours(1);
    private static final long WAIT_MILLIS = 15 * 60 * 1000L;

    private final Context context;
    private final Held held;
    private final AlarmManager alarms;
    private final Notices notices;

    Reminders(Context context) {
        this.context = context;
        held = new Held(context);
        alarms = context.getSystemService(AlarmManager.class);
        notices = new Notices(context);
    }

    /** Whether alarms are on time to the minute. Otherwise they may be late. */
    boolean exact() {
        return Build.VERSION.SDK_INT < Build.VERSION_CODES.S || alarms.canScheduleExactAlarms();
    }

    /** Makes alarms and notifications agree with {@code wanted}: sets new and changed ones and cancels the others. */
    void sync(Collection<Reminder> wanted) {
        Map<String, Reminder> next = new LinkedHashMap<>();
        for (Reminder r : wanted)
            next.put(r.key, r);
        Map<String, Reminder> before = held.wanted();
        for (Reminder r : before.values())
            if (!next.containsKey(r.key))
                takeBack(r);
        // Stored before the alarms are set, so that after a crash the next call sets them.
        held.setWanted(next.values());
        Set<String> shown = held.shown();
        shown.retainAll(next.keySet());
        held.setShown(shown);
        notices.withdrawMissed();
        for (Reminder r : arm())
            show(r);
    }

    /**
     * Sets the alarms of all future reminders by the present clock and zone, and shows those that came due meanwhile.
     * Several share one notification, so that a phone that was off does not ring ten times. A question about today keeps
     * its own buttons.
     */
    void rearm() {
        List<Reminder> missed = new ArrayList<>();
        for (Reminder r : arm())
            if (r.asks() && r.at.toLocalDate().equals(Now.local().toLocalDate()))
                show(r);
            else
                missed.add(r);
        if (missed.size() == 1)
            show(missed.get(0));
        else if (missed.size() > 1) {
            notices.showMissed();
            for (Reminder r : missed)
                held.addShown(r.key);
        }
    }

    /** Sets the alarms of future reminders. Returns the due ones not shown yet, or none during a session. */
    private List<Reminder> arm() {
        long now = Now.millis();
        ZoneId zone = ZoneId.systemDefault();
        Set<String> shown = held.shown();
        List<Reminder> missed = new ArrayList<>();
        for (Reminder r : held.wanted().values()) {
            if (shown.contains(r.key))
                continue;
            if (r.millis(zone) > now)
                arm(r, r.millis(zone));
            else
                missed.add(r);
        }
        if (!held.bathRunning())
            return missed;
        for (Reminder r : missed)
            arm(r, now + WAIT_MILLIS);
        return Collections.emptyList();
    }

    private void show(Reminder r) {
        notices.show(r);
        held.addShown(r.key);
    }

    /** Shows the reminder whose alarm rang. During a session it waits. */
    void ring(String key) {
        Reminder r = held.wanted().get(key);
        if (r == null || held.shown().contains(key))
            return;
        if (held.bathRunning()) {
            // The end of the session checks too. This alarm is for a session that ends because the app is killed.
            arm(r, Now.millis() + WAIT_MILLIS);
            return;
        }
        long due = r.millis(ZoneId.systemDefault());
        if (due > Now.millis()) {
            // The clock or the zone has changed since the alarm was set.
            arm(r, due);
            return;
        }
        show(r);
    }

    /** The person has answered it. Removes its notification, and it does not return. */
    void done(String key) {
        notices.withdraw(key);
        held.addShown(key);
        Reminder r = held.wanted().get(key);
        if (r != null)
            alarms.cancel(alarmOf(r));
    }

    /** Puts it off by an hour. */
    void later(String key) {
        notices.withdraw(key);
        Map<String, Reminder> wanted = held.wanted();
        Reminder r = wanted.get(key);
        if (r == null)
            return;
        wanted.put(key, r.at(Now.local().plus(LATER).truncatedTo(ChronoUnit.MINUTES)));
        held.setWanted(wanted.values());
        Set<String> shown = held.shown();
        shown.remove(key);
        held.setShown(shown);
        rearm();
    }

    private void takeBack(Reminder r) {
        alarms.cancel(alarmOf(r));
        notices.withdraw(r.key);
    }

    private void arm(Reminder r, long millis) {
        if (exact())
            alarms.setExactAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, millis, alarmOf(r));
        else
            alarms.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, millis, alarmOf(r));
    }

    /** Equal for equal keys, so that setting an alarm again replaces it. */
    private PendingIntent alarmOf(Reminder r) {
        Intent intent = new Intent(context, AlarmReceiver.class).setData(Uri.fromParts("firstdew", r.key, null));
        return PendingIntent.getBroadcast(context, 0, intent, PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
    }
}
