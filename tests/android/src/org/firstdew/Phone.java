package org.firstdew;

import static org.robolectric.Shadows.shadowOf;

import android.app.AlarmManager;
import android.app.Application;
import android.app.Notification;
import android.app.NotificationManager;
import android.content.BroadcastReceiver;
import android.content.Intent;
import android.view.View;
import android.view.ViewGroup;
import android.widget.FrameLayout;
import android.widget.TextView;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Consumer;

import org.robolectric.RuntimeEnvironment;
import org.robolectric.shadows.ShadowAlarmManager.ScheduledAlarm;

/** A phone in the hand of a test: its zone, its clock, its alarms rung in their order, its notifications. */
final class Phone {
    final Application app = RuntimeEnvironment.getApplication();
    final AlarmManager alarms = app.getSystemService(AlarmManager.class);
    /** What the app's function does where the app does not run. */
    static final Consumer<String> NO_APP = what -> {
        throw new UnsatisfiedLinkError(what);
    };
    private final NotificationManager notices = app.getSystemService(NotificationManager.class);

    Phone(String zone, String localTime) {
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        set(millis(localTime));
        Bridge.teller = NO_APP;
    }

    static long millis(String localTime) {
        return LocalDateTime.parse(localTime).atZone(ZoneId.systemDefault()).toInstant().toEpochMilli();
    }

    static void set(long millis) {
        Now.clock = Clock.fixed(Instant.ofEpochMilli(millis), ZoneOffset.UTC);
    }

    List<ScheduledAlarm> armed() {
        List<ScheduledAlarm> all = new ArrayList<>(shadowOf(alarms).getScheduledAlarms());
        all.sort(Comparator.comparingLong(a -> a.triggerAtTime));
        return all;
    }

    /** The time passes; alarms ring when they are due, as the system would ring them. */
    void until(String localTime) {
        long end = millis(localTime);
        for (List<ScheduledAlarm> due = armed(); !due.isEmpty() && due.get(0).triggerAtTime <= end; due = armed()) {
            ScheduledAlarm alarm = due.get(0);
            set(Math.max(Now.millis(), alarm.triggerAtTime));
            alarms.cancel(alarm.operation);
            receive(new AlarmReceiver(), shadowOf(alarm.operation).getSavedIntent());
        }
        set(end);
    }

    /** Off and on again: the system has forgotten alarms and notifications, the app's files are there. */
    void offUntil(String localTime) {
        for (ScheduledAlarm alarm : armed())
            alarms.cancel(alarm.operation);
        notices.cancelAll();
        set(millis(localTime));
        receive(new BootReceiver(), new Intent(Intent.ACTION_BOOT_COMPLETED));
    }

    void zone(String zone) {
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        receive(new BootReceiver(), new Intent(Intent.ACTION_TIMEZONE_CHANGED));
    }

    void clockSetBy(Duration change) {
        set(Now.millis() + change.toMillis());
        receive(new BootReceiver(), new Intent(Intent.ACTION_TIME_CHANGED));
    }

    void receive(BroadcastReceiver receiver, Intent intent) {
        receiver.onReceive(app, intent);
    }

    List<Notification> shown() {
        return shadowOf(notices).getAllNotifications();
    }

    List<String> titles() {
        List<String> out = new ArrayList<>();
        for (Notification n : shown())
            out.add(n.extras.getString(Notification.EXTRA_TITLE));
        out.sort(null);
        return out;
    }

    /** The texts on a notification's own view, where it has one. */
    List<String> texts(Notification n) {
        List<String> out = new ArrayList<>();
        if (n.bigContentView != null)
            collect(n.bigContentView.apply(app, new FrameLayout(app)), v -> out.add(v.getText().toString()));
        return out;
    }

    private static void collect(View view, Consumer<TextView> each) {
        if (view instanceof TextView)
            each.accept((TextView) view);
        if (view instanceof ViewGroup)
            for (int i = 0; i < ((ViewGroup) view).getChildCount(); ++i)
                collect(((ViewGroup) view).getChildAt(i), each);
    }

    /** Taps the button with that word on the only notification. */
    void tap(String word) {
        Notification only = shown().get(0);
        if (only.bigContentView != null) {
            List<TextView> found = new ArrayList<>();
            collect(only.bigContentView.apply(app, new FrameLayout(app)), v -> {
                if (word.contentEquals(v.getText()))
                    found.add(v);
            });
            if (!found.isEmpty()) {
                int sent = shadowOf(app).getBroadcastIntents().size();
                found.get(0).performClick();
                List<Intent> all = shadowOf(app).getBroadcastIntents();
                if (all.size() != sent + 1)
                    throw new AssertionError("the button " + word + " sends nothing");
                receive(new AnswerReceiver(), all.get(sent));
                return;
            }
        }
        for (Notification.Action action : shown().get(0).actions)
            if (word.contentEquals(action.title)) {
                receive(new AnswerReceiver(), shadowOf(action.actionIntent).getSavedIntent());
                return;
            }
        throw new AssertionError("no button " + word);
    }

    private static Map<String, String> actions(String... idsAndLabels) {
        Map<String, String> out = new LinkedHashMap<>();
        for (int i = 0; i < idsAndLabels.length; i += 2)
            out.put(idsAndLabels[i], idsAndLabels[i + 1]);
        return out;
    }

    static Reminder checkIn(String at) {
        return checkIn("hands", at);
    }

    static Reminder checkIn(String site, String at) {
        return new Reminder("check-in:" + site + ":" + at.substring(0, 10), LocalDateTime.parse(at), ("hands".equals(site) ? "Check in " : site + " ") + at, "How is it?",
            actions("dry", "Seca", "clammy", "Húmeda", "wet", "Mojada", "dripping", "Chorreando", "later", "Más tarde"));
    }

    static Reminder topUp(String at) {
        return new Reminder("top-up-due:hands:" + at.substring(0, 10), LocalDateTime.parse(at), "Top up " + at, "Day 13 of a dry spell",
            actions("start", "Empezar", "later", "Más tarde"));
    }
}
