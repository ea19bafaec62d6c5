package org.firstdew;

import android.content.Context;
import android.media.AudioAttributes;
import android.os.Build;
import android.os.VibrationAttributes;
import android.os.VibrationEffect;
import android.os.Vibrator;

import org.json.JSONArray;
import org.json.JSONException;

/** What makes the phone shake. */
final class Motor {
    private static final int ONCE = -1;
    private final Vibrator vibrator;

    Motor(Context context) {
        vibrator = context.getSystemService(Vibrator.class);
    }

    boolean present() {
        return vibrator != null && vibrator.hasVibrator();
    }

    /** Milliseconds still and shaking in turn, in place of what runs; none: ends what runs. */
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

    /** As an alarm: felt with the screen off and in a phone that is set to be silent, since a current may be running. */
    @SuppressWarnings("deprecation") // what phones before Android 13 have
    private void run(VibrationEffect effect) {
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU)
            vibrator.vibrate(effect, VibrationAttributes.createForUsage(VibrationAttributes.USAGE_ALARM));
        else
            vibrator.vibrate(effect, new AudioAttributes.Builder().setUsage(AudioAttributes.USAGE_ALARM).build());
    }
}
