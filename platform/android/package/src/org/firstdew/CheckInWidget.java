package org.firstdew;

import android.app.AlarmManager;
import android.app.PendingIntent;
import android.appwidget.AppWidgetManager;
import android.appwidget.AppWidgetProvider;
import android.content.ComponentName;
import android.content.Context;
import android.content.Intent;
import android.view.View;
import android.widget.RemoteViews;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * The check-in on the home screen: a row of four levels for each site not answered today. An answer goes the way of
 * those on notices. What was answered is not shown, because other people see a home screen.
 */
public final class CheckInWidget extends AppWidgetProvider {
    static final String NEW_DAY = "org.firstdew.NEW_DAY";

    @Override
    public void onReceive(Context context, Intent intent) {
        if (NEW_DAY.equals(intent.getAction()))
            refresh(context);
        else
            super.onReceive(context, intent);
    }

    @Override
    public void onUpdate(Context context, AppWidgetManager widgets, int[] ids) {
        widgets.updateAppWidget(ids, views(context));
        wakeAtMidnight(context);
    }

    /** Brings every widget on the home screen up to date. Does nothing where there is none. */
    static void refresh(Context context) {
        AppWidgetManager widgets = AppWidgetManager.getInstance(context);
        if (widgets == null)
            return; // a phone without widgets
        int[] ids = widgets.getAppWidgetIds(new ComponentName(context, CheckInWidget.class));
        if (ids.length == 0)
            return;
        widgets.updateAppWidget(ids, views(context));
        wakeAtMidnight(context);
    }

    private static RemoteViews views(Context context) {
        Held held = new Held(context);
        LocalDate today = Now.local().toLocalDate();
        List<Asked> all = held.asked();
        List<Asked> open = Asked.open(all, today, held.answers());
        RemoteViews views = new RemoteViews(context.getPackageName(), Own.id(context, "layout", "widget"));
        int sites = Own.id(context, "id", "widget_sites");
        int message = Own.id(context, "id", "widget_message");
        views.removeAllViews(sites);
        for (Asked a : open)
            views.addView(sites, row(context, held, a, today));
        views.setViewVisibility(message, open.isEmpty() ? View.VISIBLE : View.GONE);
        views.setTextViewText(message, all.isEmpty() ? context.getString(Own.id(context, "string", "widget_begin")) : held.word("widget-done"));
        views.setOnClickPendingIntent(Own.id(context, "id", "widget"), Notices.open(context, "today", "widget"));
        return views;
    }

    private static RemoteViews row(Context context, Held held, Asked asked, LocalDate today) {
        RemoteViews row = new RemoteViews(context.getPackageName(), Own.id(context, "layout", "widget_site"));
        row.setTextViewText(Own.id(context, "id", "widget_site"), asked.name);
        for (String level : Asked.LEVELS) {
            int button = Own.id(context, "id", "widget_" + level);
            row.setTextViewText(button, held.word(level));
            row.setContentDescription(button, asked.name + ": " + held.word(level));
            row.setOnClickPendingIntent(button, Notices.answer(context, level, asked.key(today)));
        }
        return row;
    }

    /** The question of the next day comes when the phone is used first on it; it wakes nobody. */
    private static void wakeAtMidnight(Context context) {
        long midnight = Now.local().toLocalDate().plusDays(1).atStartOfDay(ZoneId.systemDefault()).toInstant().toEpochMilli();
        PendingIntent alarm = PendingIntent.getBroadcast(context, 0, new Intent(context, CheckInWidget.class).setAction(NEW_DAY),
            PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
        context.getSystemService(AlarmManager.class).set(AlarmManager.RTC, midnight, alarm);
    }
}
