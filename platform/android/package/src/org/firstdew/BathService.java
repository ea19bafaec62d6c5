package org.firstdew;

import android.app.Notification;
import android.app.Service;
import android.content.Context;
import android.content.Intent;
import android.content.pm.ServiceInfo;
import android.os.Build;
import android.os.IBinder;

/** Keeps the app alive during a session and shows its countdown, with Stop, in a permanent notification. */
public final class BathService extends Service {
    private static final int ID = 2;

    /** Starts the service or updates it. {@code endMillis} is the end of the step; 0 if it has none. */
    static void show(Context context, String title, String stop, long endMillis) {
        context.startForegroundService(
            new Intent(context, BathService.class).putExtra("title", title).putExtra("stop", stop).putExtra("end", endMillis));
    }

    /** Ends the service and shows reminders that waited for the end. */
    static void end(Context context) {
        context.stopService(new Intent(context, BathService.class));
        new Held(context).setBathRunning(false);
        new Reminders(context).rearm();
    }

    @Override
    public int onStartCommand(Intent intent, int flags, int startId) {
        new Held(this).setBathRunning(true);
        Notification notice =
            new Notices(this).bath(intent.getStringExtra("title"), intent.getStringExtra("stop"), intent.getLongExtra("end", 0));
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.Q)
            startForeground(ID, notice, ServiceInfo.FOREGROUND_SERVICE_TYPE_MEDIA_PLAYBACK);
        else
            startForeground(ID, notice);
        // The system must not restart it after a kill: only the app knows the state of the session, and it asks the person.
        return START_NOT_STICKY;
    }

    @Override
    public void onTaskRemoved(Intent rootIntent) {
        end(this);
    }

    @Override
    public IBinder onBind(Intent intent) {
        return null;
    }
}
