package org.firstdew;

import android.app.AlarmManager;
import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

import java.util.Set;

/** The system forgot our alarms, or its clock, its zone or its leave to ring on time changed: set them again. */
public final class BootReceiver extends BroadcastReceiver {
    private static final Set<String> CAUSES = Set.of(Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_MY_PACKAGE_REPLACED,
        Intent.ACTION_TIME_CHANGED, Intent.ACTION_TIMEZONE_CHANGED,
        AlarmManager.ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED);

    @Override
    public void onReceive(Context context, Intent intent) {
        if (!CAUSES.contains(intent.getAction()))
            return;
        if (Intent.ACTION_BOOT_COMPLETED.equals(intent.getAction()))
            // No bath outlives a restart of the phone.
            new Held(context).setBathRunning(false);
        new Reminders(context).rearm();
    }
}
