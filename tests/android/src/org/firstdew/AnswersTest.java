package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertNull;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Notification;
import android.content.ComponentName;
import android.content.Intent;
import android.net.Uri;

import java.util.ArrayList;
import java.util.List;

import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.annotation.Config;

@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class AnswersTest {
    private static final String KEY = "check-in:hands:2026-03-02";
    private Phone phone;
    private Reminders reminders;

    @Before
    public void setUp() throws Exception {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        reminders = new Reminders(phone.app);
    }

    private static List<String> buttons(Notification n) {
        List<String> out = new ArrayList<>();
        for (Notification.Action a : n.actions == null ? new Notification.Action[0] : n.actions)
            out.add(a.title.toString());
        return out;
    }

    @Test
    public void eachKindOffersItsButtonsInThePersonsWords() {
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.until("2026-03-02T20:00");
        assertEquals(List.of("Más tarde"), buttons(phone.shown().get(0)));
        assertEquals(List.of("Check in 2026-03-02T20:00", "Seca", "Húmeda", "Mojada", "Chorreando"), phone.texts(phone.shown().get(0)));
        reminders.sync(List.of(Phone.topUp("2026-03-02T20:10")));
        phone.until("2026-03-02T20:10");
        assertEquals(List.of("Empezar", "Más tarde"), buttons(phone.shown().get(0)));
    }

    @Test
    public void aLockedScreenSaysNothingOfHealthUnlessThePersonLetsItShowNotices() throws Exception {
        new Held(phone.app).setWords(new JSONObject().put("locked", "Algo para hoy"));
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.until("2026-03-02T20:00");
        Notification n = phone.shown().get(0);
        assertEquals("the system hides it", Notification.VISIBILITY_PRIVATE, n.visibility);
        assertEquals("Algo para hoy", n.publicVersion.extras.getString(Notification.EXTRA_TITLE));
        assertNull(n.publicVersion.extras.getString(Notification.EXTRA_TEXT));
        assertNull(n.publicVersion.actions);
        for (Notification.Action a : n.actions)
            assertFalse("shown there, it can be answered there", a.isAuthenticationRequired());
    }

    @Test
    public void aCheckInFromTheNotificationIsKeptWithItsTimeUntilTheAppTakesIt() throws Exception {
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.until("2026-03-02T20:07");
        phone.tap("Húmeda");
        assertTrue(phone.shown().isEmpty());
        JSONObject told = new JSONObject(Bridge.ask(phone.app, "answers", "{}")).getJSONArray("answers").getJSONObject(0);
        assertEquals(KEY, told.getString("key"));
        assertEquals("clammy", told.getString("answer"));
        assertEquals("2026-03-02T20:07", told.getString("at"));
        assertEquals(Phone.millis("2026-03-02T20:07"), told.getLong("recorded"));

        // The app is killed before it says that it took it: it is there the next time.
        assertEquals(1, new JSONObject(Bridge.ask(phone.app, "answers", "{}")).getJSONArray("answers").length());
        Bridge.ask(phone.app, "taken", "{\"count\":1}");
        assertEquals(0, new JSONObject(Bridge.ask(phone.app, "answers", "{}")).getJSONArray("answers").length());
    }

    @Test
    public void anAnswerIsToldToARunningAppOnceItIsKept() {
        List<Integer> kept = new ArrayList<>();
        Bridge.teller = what -> kept.add("answered".equals(what) ? new Held(phone.app).answers().length() : -1);
        phone.receive(new AnswerReceiver(), new Intent("wet").setData(Uri.fromParts("firstdew", KEY, null)));
        assertEquals(List.of(1), kept);
    }

    @Test
    public void eachLevelOfEachSiteIsAnAnswerOfItsOwn() throws Exception {
        String[][] levels = {{"Seca", "dry"}, {"Húmeda", "clammy"}, {"Mojada", "wet"}, {"Chorreando", "dripping"}};
        for (int i = 0; i < levels.length; ++i) {
            String at = "2026-03-0" + (2 + i) + "T20:00";
            reminders.sync(List.of(Phone.checkIn(at), Phone.checkIn("feet", at)));
            phone.until(at);
            assertEquals(2, phone.shown().size());
            String first = phone.shown().get(0).extras.getString(Notification.EXTRA_TITLE).startsWith("feet") ? "feet" : "hands";
            phone.tap(levels[i][0]);
            assertEquals("the other site is still asked", 1, phone.shown().size());
            phone.tap(levels[3 - i][0]);
            assertTrue(phone.shown().isEmpty());
            JSONObject one = new Held(phone.app).answers().getJSONObject(2 * i);
            JSONObject other = new Held(phone.app).answers().getJSONObject(2 * i + 1);
            assertEquals("check-in:" + first + ":" + at.substring(0, 10), one.getString("key"));
            assertEquals(levels[i][1], one.getString("answer"));
            assertEquals("check-in:" + ("feet".equals(first) ? "hands" : "feet") + ":" + at.substring(0, 10), other.getString("key"));
            assertEquals(levels[3 - i][1], other.getString("answer"));
        }
    }

    @Test
    public void afterAnHourOffTodaysQuestionsHaveTheirButtons() {
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00"), Phone.checkIn("feet", "2026-03-02T20:00")));
        phone.offUntil("2026-03-02T21:00");
        assertEquals(List.of("Check in 2026-03-02T20:00", "feet 2026-03-02T20:00"), phone.titles());
    }

    @Test
    public void anAnswerThatCameWhileTheAppWasTakingOthersIsNotLost() throws Exception {
        Held held = new Held(phone.app);
        held.addAnswer(new JSONObject().put("key", "one"));
        held.addAnswer(new JSONObject().put("key", "two"));
        held.dropAnswers(1);
        assertEquals("two", held.answers().getJSONObject(0).getString("key"));
    }

    @Test
    public void answeredIsNotShownAgain() {
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.until("2026-03-02T20:00");
        phone.tap("Seca");
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.offUntil("2026-03-02T21:00");
        assertTrue(phone.shown().isEmpty());
    }

    @Test
    public void laterComesAgainAfterAnHour() throws Exception {
        reminders.sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.until("2026-03-02T20:05");
        phone.tap("Más tarde");
        assertTrue(phone.shown().isEmpty());
        phone.until("2026-03-02T21:04");
        assertTrue(phone.shown().isEmpty());
        phone.until("2026-03-02T21:05");
        assertEquals(1, phone.shown().size());
        assertEquals("later", new Held(phone.app).answers().getJSONObject(0).getString("answer"));
    }

    @Test
    public void startOpensTheAppAtTheBath() throws Exception {
        reminders.sync(List.of(Phone.topUp("2026-03-02T20:00")));
        phone.until("2026-03-02T20:00");
        Intent start = shadowOf(phone.shown().get(0).actions[0].actionIntent).getSavedIntent();
        assertTrue(shadowOf(phone.shown().get(0).actions[0].actionIntent).isActivityIntent());
        assertEquals(new ComponentName(phone.app, OpenActivity.class), start.getComponent());
        OpenActivity opened = Robolectric.buildActivity(OpenActivity.class, start).create().get();
        assertTrue(opened.isFinishing());
        assertEquals("bath", new JSONObject(Bridge.ask(phone.app, "place", "{}")).getString("place"));
        assertEquals("said once", "", new JSONObject(Bridge.ask(phone.app, "place", "{}")).getString("place"));
    }

    @Test
    public void anUnknownAnswerIsNotKept() {
        phone.receive(new AnswerReceiver(), new Intent("soaked").setData(Uri.fromParts("firstdew", KEY, null)));
        phone.receive(new AnswerReceiver(), new Intent("dry"));
        assertEquals(0, new Held(phone.app).answers().length());
    }
}
