package org.firstdew;

import android.app.AlarmManager;
import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** Sets the alarms again after a restart or a change of the clock, the zone or the permission for exact alarms. */
public final class BootReceiver extends BroadcastReceiver {
    private static final Set<String> CAUSES = new HashSet<>(Arrays.asList(Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_MY_PACKAGE_REPLACED,
        Intent.ACTION_TIME_CHANGED, Intent.ACTION_TIMEZONE_CHANGED,
        AlarmManager.ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED));

    @Override
    public void onReceive(Context context, Intent intent) {
        if (!CAUSES.contains(intent.getAction()))
            return;
        if (Intent.ACTION_BOOT_COMPLETED.equals(intent.getAction()))
            // A restart of the phone ends every session.
            new Held(context).setBathRunning(false);
        new Reminders(context).rearm();
        CheckInWidget.refresh(context);
    }
}
