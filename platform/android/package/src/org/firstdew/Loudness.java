package org.firstdew;

import android.content.Context;
import android.media.AudioAttributes;
import android.media.AudioFocusRequest;
import android.media.AudioManager;

/** Asks other programs to play softly while the voice leads a session. */
final class Loudness {
    /** One for the process, because only the granted request can be returned. */
    private static final AudioFocusRequest REQUEST =
        new AudioFocusRequest.Builder(AudioManager.AUDIOFOCUS_GAIN_TRANSIENT_MAY_DUCK)
            .setAudioAttributes(new AudioAttributes.Builder().setUsage(AudioAttributes.USAGE_MEDIA)
                .setContentType(AudioAttributes.CONTENT_TYPE_SPEECH).build())
            .setOnAudioFocusChangeListener(new AudioManager.OnAudioFocusChangeListener() {
                @Override
                public void onAudioFocusChange(int change) {} // a phone call takes the speaker too, and the screen continues
            })
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
