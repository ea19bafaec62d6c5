package org.firstdew;

import android.content.Context;
import android.media.AudioManager;
import android.media.ToneGenerator;
import android.os.Handler;
import android.os.Looper;
import android.os.SystemClock;

import org.json.JSONArray;
import org.json.JSONException;

/**
 * Calls out when the app does not lead its session any more, though the service lives: a hanging app says nothing itself.
 * The tone is an alarm to the system, so neither silent mode nor a low volume of media takes it away.
 */
final class Watch {
    /** The app says every two seconds that it leads (our own choice, longer than any pause it makes). */
    static final long SILENT_MILLIS = 10_000;
    private static final long LOOK_MILLIS = 2_000;
    private static final int TONE_MILLIS = 1_500;
    private static volatile long alive;

    private final Context context;
    private final Handler handler = new Handler(Looper.getMainLooper());
    private final Runnable look = new Runnable() {
        @Override
        public void run() {
            look();
        }
    };
    private boolean lost;

    Watch(Context context) {
        this.context = context;
    }

    /** The app leads. */
    static void alive() {
        alive = SystemClock.elapsedRealtime();
    }

    void begin() {
        alive();
        handler.postDelayed(look, LOOK_MILLIS);
    }

    void end() {
        handler.removeCallbacksAndMessages(null);
    }

    private void look() {
        boolean silent = SystemClock.elapsedRealtime() - alive > SILENT_MILLIS;
        if (silent)
            callOut(context);
        if (silent != lost && silent)
            new Notices(context).showLost();
        if (silent != lost && !silent)
            new Notices(context).withdrawLost();
        lost = silent;
        handler.postDelayed(look, LOOK_MILLIS);
    }

    /** A tone and a vibration. */
    static void callOut(Context context) {
        try {
            final ToneGenerator tone = new ToneGenerator(AudioManager.STREAM_ALARM, ToneGenerator.MAX_VOLUME);
            tone.startTone(ToneGenerator.TONE_CDMA_ALERT_CALL_GUARD, TONE_MILLIS);
            new Handler(Looper.getMainLooper()).postDelayed(new Runnable() {
                @Override
                public void run() {
                    tone.release();
                }
            }, TONE_MILLIS);
        } catch (RuntimeException busy) { // the system has no tone to give
            android.util.Log.w("firstdew", busy);
        }
        try {
            new Motor(context).shake(new JSONArray("[0,600,200,600]"));
        } catch (JSONException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
