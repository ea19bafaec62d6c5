package org.firstdew;

import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

/** Receives the alarm of a reminder. Not exported, because only the system calls it, through our pending intent. */
public final class AlarmReceiver extends BroadcastReceiver {
    @Override
    public void onReceive(Context context, Intent intent) {
        if (intent.getData() != null)
            new Reminders(context).ring(intent.getData().getSchemeSpecificPart());
    }
}
