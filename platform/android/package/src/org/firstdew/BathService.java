package org.firstdew;

import android.app.Notification;
import android.app.Service;
import android.content.Context;
import android.content.Intent;
import android.content.pm.ServiceInfo;
import android.media.session.MediaSession;
import android.media.session.PlaybackState;
import android.os.Build;
import android.os.IBinder;
import android.os.PowerManager;

/** Keeps the app alive and the phone from sleeping during a session and shows its countdown, with Stop, in a permanent notification. */
public final class BathService extends Service {
    private static final int ID = 2;
    /** Longer than any session with its pauses. The system lets the phone sleep then, whatever became of the app. */
    private static final long LONGEST_MILLIS = 3 * 60 * 60 * 1000L;
    /** Lets the voice go on with the screen off. */
    private PowerManager.WakeLock awake;
    /** Tells the system that something is played on. It takes no buttons, because a headset that is taken off presses Pause. */
    private MediaSession playing;
    private final Watch watch = new Watch(this);

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
    public void onCreate() {
        super.onCreate();
        awake = getSystemService(PowerManager.class).newWakeLock(PowerManager.PARTIAL_WAKE_LOCK, "firstdew:session");
        awake.setReferenceCounted(false);
        awake.acquire(LONGEST_MILLIS);
        playing = new MediaSession(this, "firstdew:session");
        playing.setPlaybackState(new PlaybackState.Builder().setState(PlaybackState.STATE_PLAYING, PlaybackState.PLAYBACK_POSITION_UNKNOWN, 1).build());
        playing.setActive(true);
    }

    @Override
    public void onDestroy() {
        watch.end();
        playing.release();
        awake.release();
        super.onDestroy();
    }

    @Override
    public int onStartCommand(Intent intent, int flags, int startId) {
        if (intent == null)
            return lost();
        new Held(this).setBathRunning(true);
        new Notices(this).withdrawLost();
        watch.end();
        watch.begin();
        Notification notice =
            new Notices(this).bath(intent.getStringExtra("title"), intent.getStringExtra("stop"), intent.getLongExtra("end", 0));
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.Q)
            startForeground(ID, notice, ServiceInfo.FOREGROUND_SERVICE_TYPE_MEDIA_PLAYBACK);
        else
            startForeground(ID, notice);
        return START_STICKY;
    }

    /** The system killed the app in the middle of a session and started this alone again. Only the app knows the state of the
     * session, and asks the person once it is opened; until then somebody may sit there with current flowing. */
    private int lost() {
        new Held(this).setBathRunning(false);
        new Notices(this).showLost();
        Watch.callOut(this);
        stopSelf();
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
