package org.firstdew;

import android.content.Context;
import android.media.AudioAttributes;
import android.os.Build;
import android.os.VibrationAttributes;
import android.os.VibrationEffect;
import android.os.Vibrator;

import org.json.JSONArray;
import org.json.JSONException;

/** The vibration motor. */
final class Motor {
    private static final int ONCE = -1;
    private final Vibrator vibrator;

    Motor(Context context) {
        vibrator = context.getSystemService(Vibrator.class);
    }

    boolean present() {
        return vibrator != null && vibrator.hasVibrator();
    }

    /** Starts alternating pauses and vibrations in milliseconds. An empty list ends the vibration. */
    void shake(JSONArray timings) throws JSONException {
        if (!present())
            return;
        vibrator.cancel();
        if (timings.length() == 0)
            return;
        long[] millis = new long[timings.length()];
        for (int i = 0; i < millis.length; ++i)
            millis[i] = timings.getLong(i);
        run(VibrationEffect.createWaveform(millis, ONCE));
    }

    /** Vibrates as an alarm does: also with the screen off and in silent mode, because a current may be flowing. */
    @SuppressWarnings("deprecation") // needed before Android 13
    private void run(VibrationEffect effect) {
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU)
            vibrator.vibrate(effect, VibrationAttributes.createForUsage(VibrationAttributes.USAGE_ALARM));
        else
            vibrator.vibrate(effect, new AudioAttributes.Builder().setUsage(AudioAttributes.USAGE_ALARM).build());
    }
}
