package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertNull;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.os.Looper;
import android.speech.tts.TextToSpeech;
import android.speech.tts.Voice;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.json.JSONObject;
import org.junit.After;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.annotation.Config;
import org.robolectric.shadows.ShadowTextToSpeech;

/** The phone's own voice speaks prompts into files. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class ClipSpeakerTest {
    private final List<String> told = new ArrayList<>();
    private Phone phone;
    private File file;

    @Before
    public void setUp() {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        Bridge.teller = told::add;
        file = new File(phone.app.getCacheDir(), "fresh.wav");
    }

    @After
    public void tearDown() {
        ClipSpeaker.drop();
        run();
        ShadowTextToSpeech.reset();
    }

    private static void run() {
        shadowOf(Looper.getMainLooper()).idle();
    }

    private void speak(String language, String text) throws Exception {
        Bridge.ask(phone.app, "speak", new JSONObject().put("language", language).put("text", text).put("file", file.getPath()).toString());
        run();
    }

    private ShadowTextToSpeech engine() {
        return shadowOf(ShadowTextToSpeech.getLastTextToSpeechInstance());
    }

    private void starts(int status) {
        engine().getOnInitListener().onInit(status);
        run();
    }

    private static Voice voice(String tag, boolean network, String... features) {
        return new Voice(tag, Locale.forLanguageTag(tag), Voice.QUALITY_NORMAL, Voice.LATENCY_NORMAL, network, Set.of(features));
    }

    @Test
    public void aTextIsSpokenIntoItsFileOnceTheEngineHasStarted() throws Exception {
        ShadowTextToSpeech.addLanguageAvailability(Locale.forLanguageTag("pt-BR"));
        speak("pt_BR", "Segure firme.");
        assertNull("not before", engine().getLastSynthesizeToFileText());
        engine().simulateSynthesizeToFileResult(TextToSpeech.SUCCESS);
        starts(TextToSpeech.SUCCESS);
        assertEquals("Segure firme.", engine().getLastSynthesizeToFileText());
        assertEquals(file, engine().getLastSynthesizeToFile());
        assertEquals(Locale.forLanguageTag("pt-BR"), engine().getCurrentLanguage());
        assertEquals(List.of("spoken"), told);
    }

    @Test
    public void withoutAnEngineOrTheLanguageTheAppIsToldSo() throws Exception {
        speak("ar", "توقف");
        starts(TextToSpeech.ERROR);
        assertEquals(List.of("unspoken"), told);
        ClipSpeaker.drop();
        run();
        speak("ar", "توقف");
        starts(TextToSpeech.SUCCESS); // it speaks no Arabic
        assertEquals(List.of("unspoken", "unspoken"), told);
        assertNull(engine().getLastSynthesizeToFileText());
    }

    @Test
    public void aVoiceThatNeedsTheNetworkOrIsNotInstalledIsNotUsed() throws Exception {
        ShadowTextToSpeech.addLanguageAvailability(Locale.forLanguageTag("ar"));
        ShadowTextToSpeech.addVoice(voice("ar", true));
        ShadowTextToSpeech.addVoice(voice("ar-EG", false, TextToSpeech.Engine.KEY_FEATURE_NOT_INSTALLED));
        ShadowTextToSpeech.addVoice(voice("de-DE", false));
        speak("ar", "توقف");
        starts(TextToSpeech.SUCCESS);
        assertEquals(List.of("unspoken"), told);
        Voice own = voice("ar-SA", false);
        ShadowTextToSpeech.addVoice(own);
        engine().simulateSynthesizeToFileResult(TextToSpeech.SUCCESS);
        speak("ar", "توقف");
        assertEquals(List.of("unspoken", "spoken"), told);
        assertEquals(own, engine().getCurrentVoice());
    }

    @Test
    public void whatIsNotWantedAnyMoreIsNotAnswered() throws Exception {
        speak("de", "Eins");
        ShadowTextToSpeech first = engine();
        Bridge.ask(phone.app, "speak-no-more", "{}");
        run();
        assertTrue(first.isShutdown());
        first.getOnInitListener().onInit(TextToSpeech.SUCCESS);
        run();
        assertEquals(List.of(), told);
    }
}
