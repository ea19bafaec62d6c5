package org.firstdew;

import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

/**
 * Receives Stop from the notification of a running session, also on a locked screen. The app stops the session as its own
 * button does. Without the app there is no session to stop, and its notification goes.
 */
public final class StopReceiver extends BroadcastReceiver {
    @Override
    public void onReceive(Context context, Intent intent) {
        if (!Bridge.tell("stop"))
            BathService.end(context);
    }
}
