package org.firstdew;

import android.app.Notification;
import android.app.NotificationChannel;
import android.app.NotificationManager;
import android.app.PendingIntent;
import android.content.Context;
import android.content.Intent;
import android.graphics.drawable.Icon;
import android.net.Uri;
import android.widget.RemoteViews;

import java.util.Map;

/** Shows the notifications: two channels, and the buttons on a reminder. */
final class Notices {
    static final String REMINDERS = "reminders";
    static final String BATH = "bath";
    private static final String MISSED = "missed";
    private static final String LOST = "lost";
    private static final int ID = 1;

    private final Context context;
    private final Held held;
    private final NotificationManager manager;

    Notices(Context context) {
        this.context = context;
        held = new Held(context);
        manager = context.getSystemService(NotificationManager.class);
    }

    /** Creates the channels or renames them after a change of language. The description says if alarms may be late. */
    void makeChannels(boolean exact) {
        NotificationChannel reminders =
            new NotificationChannel(REMINDERS, held.word("channel-reminders"), NotificationManager.IMPORTANCE_HIGH);
        reminders.setDescription(exact ? "" : held.word("may-come-late"));
        manager.createNotificationChannel(reminders);
        // Silent, because the session has its own voice.
        manager.createNotificationChannel(
            new NotificationChannel(BATH, held.word("channel-bath"), NotificationManager.IMPORTANCE_LOW));
    }

    void show(Reminder r) {
        makeChannels(new Reminders(context).exact());
        Notification.Builder notice = common(r.title, r.text).setContentIntent(open(context, "today", r.key));
        if (r.asks())
            notice.setStyle(new Notification.DecoratedCustomViewStyle()).setCustomBigContentView(levels(r)).setCustomHeadsUpContentView(levels(r));
        for (Map.Entry<String, String> a : r.actions.entrySet())
            if (!r.asks() || !Reminder.LEVELS.contains(a.getKey()))
                notice.addAction(new Notification.Action.Builder(null, a.getValue(),
                    "start".equals(a.getKey()) ? open(context, "bath", r.key) : answer(context, a.getKey(), r.key)).build());
        manager.notify(r.key, ID, notice.build());
    }

    /** The question with a button for each level. The system itself draws three buttons at most, and there are four levels. */
    private RemoteViews levels(Reminder r) {
        RemoteViews out = new RemoteViews(context.getPackageName(), Own.id(context, "layout", "levels"));
        out.setTextViewText(Own.id(context, "id", "question"), r.title);
        for (String level : Reminder.LEVELS) {
            int button = Own.id(context, "id", level);
            out.setTextViewText(button, r.actions.get(level));
            out.setOnClickPendingIntent(button, answer(context, level, r.key));
        }
        return out;
    }

    /** Shows one notification for several reminders that came due while the phone was off. */
    void showMissed() {
        makeChannels(new Reminders(context).exact());
        manager.notify(MISSED, ID, common(held.word("missed-title"), held.word("missed-text")).setContentIntent(open(context, "today", MISSED)).build());
    }

    /** Nobody leads the session that was running. On a locked screen too: it names nothing of the person's health. */
    void showLost() {
        makeChannels(new Reminders(context).exact());
        manager.notify(LOST, ID, common(held.word("lost-title"), held.word("lost-text")).setCategory(Notification.CATEGORY_ALARM)
            .setVisibility(Notification.VISIBILITY_PUBLIC).setContentIntent(open(context, "bath", LOST)).build());
    }

    void withdrawLost() {
        withdraw(LOST);
    }

    void withdraw(String key) {
        manager.cancel(key, ID);
    }

    void withdrawMissed() {
        withdraw(MISSED);
    }

    /** Whether the person allows notifications. */
    boolean allowed() {
        return manager.areNotificationsEnabled();
    }

    /**
     * The running session. The system draws the countdown. A locked screen shows it whole, because Stop has to be there;
     * so {@code title} names nothing of the person's health.
     */
    Notification bath(String title, String stop, long endMillis) {
        makeChannels(new Reminders(context).exact());
        Notification.Builder notice = new Notification.Builder(context, BATH).setSmallIcon(icon()).setContentTitle(title)
            .setVisibility(Notification.VISIBILITY_PUBLIC)
            .addAction(new Notification.Action.Builder(null, stop, stop()).build())
            .setOngoing(true).setOnlyAlertOnce(true).setCategory(Notification.CATEGORY_PROGRESS).setContentIntent(open(context, "bath", BATH));
        if (endMillis > 0)
            notice.setUsesChronometer(true).setChronometerCountDown(true).setShowWhen(true).setWhen(endMillis);
        return notice.build();
    }

    private Notification.Builder common(String title, String text) {
        return new Notification.Builder(context, REMINDERS).setSmallIcon(icon()).setContentTitle(title).setContentText(text)
            .setStyle(new Notification.BigTextStyle().bigText(text)).setCategory(Notification.CATEGORY_REMINDER).setAutoCancel(true)
            // A locked screen shows text and buttons only if the person has told the phone to show such things there.
            .setVisibility(Notification.VISIBILITY_PRIVATE)
            .setPublicVersion(new Notification.Builder(context, REMINDERS).setSmallIcon(icon()).setContentTitle(held.word("locked")).build());
    }

    private Icon icon() {
        int own = Own.id(context, "drawable", "notice");
        return Icon.createWithResource(context, own == 0 ? android.R.drawable.ic_popup_reminder : own);
    }

    private PendingIntent stop() {
        return PendingIntent.getBroadcast(context, 0, new Intent(context, StopReceiver.class), PendingIntent.FLAG_IMMUTABLE);
    }

    /** The button that gives that answer. */
    static PendingIntent answer(Context context, String what, String key) {
        Intent intent = new Intent(context, AnswerReceiver.class).setAction(what).setData(Uri.fromParts("firstdew", key, null));
        return PendingIntent.getBroadcast(context, 0, intent, PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
    }

    /** Opens the app at that place; {@code key} tells one button from another. */
    static PendingIntent open(Context context, String place, String key) {
        Intent intent = new Intent(context, OpenActivity.class).setData(Uri.fromParts("firstdew", place + ":" + key, null))
            .putExtra(OpenActivity.PLACE, place).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK);
        return PendingIntent.getActivity(context, 0, intent, PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
    }
}
