package org.firstdew;

import android.content.Context;
import android.media.AudioAttributes;
import android.media.AudioFocusRequest;
import android.media.AudioManager;

/** Has other programs play softly while a bath is led by voice. */
final class Loudness {
    /** One for the process: only the request that was granted can be given back. */
    private static final AudioFocusRequest REQUEST =
        new AudioFocusRequest.Builder(AudioManager.AUDIOFOCUS_GAIN_TRANSIENT_MAY_DUCK)
            .setAudioAttributes(new AudioAttributes.Builder().setUsage(AudioAttributes.USAGE_MEDIA)
                .setContentType(AudioAttributes.CONTENT_TYPE_SPEECH).build())
            .setOnAudioFocusChangeListener(change -> { }) // a call that takes it away also takes the speaker; the screen goes on
            .build();
    private final AudioManager audio;

    Loudness(Context context) {
        audio = context.getSystemService(AudioManager.class);
    }

    void aboveOthers(boolean on) {
        if (on)
            audio.requestAudioFocus(REQUEST);
        else
            audio.abandonAudioFocusRequest(REQUEST);
    }
}
