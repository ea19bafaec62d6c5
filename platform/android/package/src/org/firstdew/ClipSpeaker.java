package org.firstdew;

import android.content.Context;
import android.os.Bundle;
import android.os.Handler;
import android.os.Looper;
import android.speech.tts.TextToSpeech;
import android.speech.tts.UtteranceProgressListener;
import android.speech.tts.Voice;

import java.io.File;
import java.util.Locale;
import java.util.Set;

/**
 * Has the phone's own voice speak a text into a file, so that a session can be led in a language without recorded clips.
 * Tells the app {@code spoken} or {@code unspoken}. A voice that needs the network is not used.
 */
final class ClipSpeaker {
    private static final Handler MAIN = new Handler(Looper.getMainLooper());
    /** One for the process: an engine takes a second to start. Touched on the main thread only. */
    private static ClipSpeaker current;

    private final TextToSpeech engine;
    private Boolean ready;
    private Runnable waiting;
    private int number;

    private ClipSpeaker(Context context) {
        engine = new TextToSpeech(context.getApplicationContext(), new TextToSpeech.OnInitListener() {
            @Override
            public void onInit(int status) {
                MAIN.post(new Runnable() {
                    @Override
                    public void run() {
                        started(status);
                    }
                });
            }
        });
        engine.setOnUtteranceProgressListener(new UtteranceProgressListener() {
            @Override
            public void onStart(String id) {}

            @Override
            public void onDone(String id) {
                tell(id, true);
            }

            @Override
            @Deprecated
            public void onError(String id) {
                tell(id, false);
            }

            @Override
            public void onError(String id, int code) {
                tell(id, false);
            }
        });
    }

    /** {@code language} as the app names it: de, pt_BR. */
    static void speak(Context context, String language, String text, File file) {
        MAIN.post(new Runnable() {
            @Override
            public void run() {
                if (current == null)
                    current = new ClipSpeaker(context);
                current.ask(Locale.forLanguageTag(language.replace('_', '-')), text, file);
            }
        });
    }

    /** Forgets what is being spoken and lets the engine go. */
    static void drop() {
        MAIN.post(new Runnable() {
            @Override
            public void run() {
                if (current != null)
                    current.engine.shutdown();
                current = null;
            }
        });
    }

    private void ask(Locale locale, String text, File file) {
        ++number; // what was asked before is not wanted any more
        waiting = new Runnable() {
            @Override
            public void run() {
                boolean begun = ready && choose(locale)
                    && engine.synthesizeToFile(text, new Bundle(), file, String.valueOf(number)) == TextToSpeech.SUCCESS;
                if (!begun)
                    Bridge.tell("unspoken");
            }
        };
        goOn();
    }

    private void started(int status) {
        ready = status == TextToSpeech.SUCCESS;
        goOn();
    }

    private void goOn() {
        if (ready == null || waiting == null || current != this)
            return;
        Runnable next = waiting;
        waiting = null;
        next.run();
    }

    /** The engine calls from a thread of its own. */
    private void tell(String id, boolean written) {
        MAIN.post(new Runnable() {
            @Override
            public void run() {
                ended(id, written);
            }
        });
    }

    private void ended(String id, boolean written) {
        if (current == this && id.equals(String.valueOf(number)))
            Bridge.tell(written ? "spoken" : "unspoken");
    }

    /** Whether the engine has a voice of that language on the phone itself. */
    private boolean choose(Locale locale) {
        if (engine.setLanguage(locale) < TextToSpeech.LANG_AVAILABLE)
            return false;
        Set<Voice> voices = engine.getVoices();
        if (voices == null || voices.isEmpty()) // an engine that does not name its voices
            return true;
        for (Voice voice : voices)
            if (fits(voice, locale))
                return engine.setVoice(voice) == TextToSpeech.SUCCESS;
        return false;
    }

    private static boolean fits(Voice voice, Locale locale) {
        boolean there = voice.getFeatures() == null || !voice.getFeatures().contains(TextToSpeech.Engine.KEY_FEATURE_NOT_INSTALLED);
        Locale spoken = voice.getLocale();
        boolean country = locale.getCountry().isEmpty() || locale.getCountry().equals(spoken.getCountry());
        return there && country && !voice.isNetworkConnectionRequired() && new Locale(locale.getLanguage()).getISO3Language().equals(spoken.getISO3Language());
    }
}
