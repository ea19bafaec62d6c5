package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Notification;
import android.app.Service;
import android.content.Intent;
import android.media.session.MediaSession;
import android.os.Looper;
import android.os.PowerManager;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.android.controller.ServiceController;
import org.robolectric.annotation.Config;
import org.robolectric.shadows.ShadowPowerManager;
import org.robolectric.shadows.ShadowToneGenerator;
import org.robolectric.util.ReflectionHelpers;

/** A session that cannot fall silent: what the service does when the app hangs or was killed. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class LedTest {
    private Phone phone;

    @Before
    public void setUp() throws Exception {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        new Held(phone.app).setWords(new JSONObject("{\"lost-title\":\"Strom auf null\",\"lost-text\":\"Niemand leitet\"}"));
        ShadowToneGenerator.reset();
    }

    private ServiceController<BathService> led() {
        BathService.show(phone.app, "Plateau", "Stopp", 0);
        return Robolectric.buildService(BathService.class, shadowOf(phone.app).getNextStartedService()).create().startCommand(0, 1);
    }

    /** Time passes; the app says every two seconds that it leads, or says nothing. */
    private void pass(int seconds, boolean leads) throws Exception {
        for (int i = 0; i < seconds; i += 2) {
            if (leads)
                Bridge.ask(phone.app, "alive", "{}");
            shadowOf(Looper.getMainLooper()).idleFor(Duration.ofSeconds(2));
        }
    }

    /** What calls out; the session's own notification is there besides. */
    private List<Notification> lost() {
        List<Notification> out = new ArrayList<>(phone.shown());
        out.removeIf(n -> !Notification.CATEGORY_ALARM.equals(n.category));
        return out;
    }

    private int tones() {
        return ShadowToneGenerator.getPlayedTones().size();
    }

    @Test
    public void whileTheAppLeadsNothingCallsOut() throws Exception {
        led();
        pass(120, true);
        assertEquals(0, tones());
        assertEquals(List.of(), lost());
    }

    @Test
    public void anAppThatHangsIsCalledOutAgainAndAgainUntilItLeadsAgain() throws Exception {
        led();
        pass(8, false);
        assertEquals(0, tones());
        pass(12, false);
        int first = tones();
        assertTrue(String.valueOf(first), first >= 3);
        assertEquals(1, lost().size());
        Notification n = lost().get(0);
        assertEquals("Strom auf null", n.extras.getString(Notification.EXTRA_TITLE));
        assertEquals("on a locked screen too", Notification.VISIBILITY_PUBLIC, n.visibility);
        pass(4, true);
        int then = tones();
        pass(20, true);
        assertEquals(then, tones());
        assertEquals(List.of(), lost());
    }

    @Test
    public void theSystemHearsThatSomethingIsPlayedOn() {
        ServiceController<BathService> service = led();
        MediaSession playing = ReflectionHelpers.getField(service.get(), "playing");
        assertTrue(playing.isActive());
        service.destroy();
    }

    @Test
    public void afterTheSessionNothingCallsOut() throws Exception {
        led().destroy();
        pass(60, false);
        assertEquals(0, tones());
    }

    @Test
    public void anAppThatWasKilledIsCalledOutAndTheSessionIsNotTakenForRunning() {
        assertEquals(Service.START_STICKY, led().get().onStartCommand(new Intent().putExtra("title", "x").putExtra("stop", "y"), 0, 2));
        new Held(phone.app).setBathRunning(true);
        ServiceController<BathService> again = Robolectric.buildService(BathService.class).create();
        assertEquals(Service.START_NOT_STICKY, again.get().onStartCommand(null, 0, 1)); // as the system starts it again
        assertEquals(1, tones());
        assertEquals(1, lost().size());
        assertFalse(new Held(phone.app).bathRunning());
        assertTrue(shadowOf(again.get()).isStoppedBySelf());
        PowerManager.WakeLock lock = ShadowPowerManager.getLatestWakeLock();
        again.destroy();
        assertFalse(lock.isHeld());
        led(); // the app came back
        assertEquals(List.of(), lost());
    }
}
