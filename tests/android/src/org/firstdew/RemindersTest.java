package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.AlarmManager;
import android.content.Intent;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.json.JSONArray;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.annotation.Config;
import org.robolectric.shadows.ShadowAlarmManager;

@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class RemindersTest {
    private Phone phone;
    private Reminders reminders;

    @Before
    public void setUp() {
        ShadowAlarmManager.setCanScheduleExactAlarms(true);
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        reminders = new Reminders(phone.app);
    }

    private static List<Reminder> daily(String from, int days) {
        List<Reminder> out = new ArrayList<>();
        for (int i = 0; i < days; ++i)
            out.add(Phone.checkIn(LocalDate.parse(from).plusDays(i) + "T20:00"));
        return out;
    }

    @Test
    public void setsOneAlarmForEachAndTheSameAgainWhenAskedTwice() {
        reminders.sync(daily("2026-03-02", 3));
        List<Long> first = new ArrayList<>();
        phone.armed().forEach(a -> first.add(a.triggerAtTime));
        reminders.sync(daily("2026-03-02", 3));
        List<Long> second = new ArrayList<>();
        phone.armed().forEach(a -> second.add(a.triggerAtTime));
        assertEquals(List.of(Phone.millis("2026-03-02T20:00"), Phone.millis("2026-03-03T20:00"), Phone.millis("2026-03-04T20:00")), first);
        assertEquals(first, second);
        assertTrue(phone.shown().isEmpty());
    }

    @Test
    public void movesAChangedOneAndTakesBackOneThatIsGone() {
        reminders.sync(daily("2026-03-02", 2));
        Reminder first = daily("2026-03-02", 1).get(0);
        reminders.sync(List.of(first.at(first.at.minusHours(2))));
        assertEquals(1, phone.armed().size());
        assertEquals(Phone.millis("2026-03-02T18:00"), phone.armed().get(0).triggerAtTime);
    }

    @Test
    public void showsEachOnceAtItsTimeWithTheAppClosed() {
        reminders.sync(daily("2026-03-02", 2));
        phone.until("2026-03-02T19:59");
        assertEquals(List.of(), phone.titles());
        phone.until("2026-03-02T20:00");
        assertEquals(List.of("Check in 2026-03-02T20:00"), phone.titles());
        phone.until("2026-03-03T21:00");
        assertEquals(2, phone.titles().size());
        assertTrue(phone.armed().isEmpty());
    }

    @Test
    public void doesNotShowAgainWhatTheAppStillWants() {
        reminders.sync(daily("2026-03-02", 1));
        phone.until("2026-03-02T20:01");
        phone.app.getSystemService(android.app.NotificationManager.class).cancelAll();
        reminders.sync(daily("2026-03-02", 1));
        assertTrue("the person wiped it away", phone.shown().isEmpty());
    }

    @Test
    public void withdrawsWhatIsDone() {
        reminders.sync(daily("2026-03-02", 1));
        phone.until("2026-03-02T20:01");
        reminders.sync(List.of());
        assertTrue(phone.shown().isEmpty());
        phone.until("2026-03-03T20:01");
        assertTrue(phone.shown().isEmpty());
    }

    @Test
    public void aCrashBetweenHoldingAndArmingIsMendedByTheNextLook() {
        new Held(phone.app).setWanted(daily("2026-03-02", 2));
        assertTrue(phone.armed().isEmpty());
        reminders.sync(daily("2026-03-02", 2));
        assertEquals(2, phone.armed().size());
    }

    @Test
    public void comesBackAfterARestartOfThePhone() {
        reminders.sync(daily("2026-03-02", 3));
        phone.offUntil("2026-03-02T12:00");
        assertEquals(3, phone.armed().size());
        phone.until("2026-03-02T20:00");
        assertEquals(1, phone.titles().size());
    }

    @Test
    public void twoDaysOffGiveOneLineNotTwo() {
        new Held(phone.app).setWords(json("{\"missed-title\":\"While your phone was off\",\"missed-text\":\"x\"}"));
        reminders.sync(daily("2026-03-02", 4));
        phone.offUntil("2026-03-04T08:00");
        assertEquals(List.of("While your phone was off"), phone.titles());
        phone.until("2026-03-04T20:00");
        assertEquals(List.of("Check in 2026-03-04T20:00", "While your phone was off"), phone.titles());
        reminders.sync(daily("2026-03-04", 2));
        assertEquals("opening the app answers the line", List.of("Check in 2026-03-04T20:00"), phone.titles());
    }

    @Test
    public void oneMissedIsShownAsItself() {
        reminders.sync(daily("2026-03-02", 2));
        phone.offUntil("2026-03-03T08:00");
        assertEquals(List.of("Check in 2026-03-02T20:00"), phone.titles());
    }

    @Test
    public void keepsThePersonsHourOverBothChangesOfTheClocksInThreeZones() {
        // Days and directions of the changes: IANA time zone database.
        String[][] changes = {{"Europe/Madrid", "2026-03-28"}, {"Europe/Madrid", "2026-10-24"}, {"America/New_York", "2026-03-07"},
            {"America/New_York", "2026-10-31"}, {"Australia/Sydney", "2026-04-04"}, {"Australia/Sydney", "2026-10-03"}};
        for (String[] change : changes) {
            Phone there = new Phone(change[0], change[1] + "T09:00");
            reminders.sync(List.of());
            reminders.sync(daily(change[1], 3));
            for (int i = 0; i < 3; ++i) {
                there.until(LocalDate.parse(change[1]).plusDays(i) + "T19:59");
                assertEquals(String.join(" ", change), i, there.titles().size());
                there.until(LocalDate.parse(change[1]).plusDays(i) + "T20:00");
                assertEquals(String.join(" ", change), i + 1, there.titles().size());
            }
        }
    }

    @Test
    public void aTimeThatTheClocksLeapOverStillComesOnItsDay() {
        phone = new Phone("Europe/Madrid", "2026-03-28T22:00");
        reminders.sync(List.of(Phone.checkIn("2026-03-29T02:30")));
        phone.until("2026-03-29T03:29");
        assertTrue(phone.shown().isEmpty());
        phone.until("2026-03-29T03:30");
        assertEquals(1, phone.shown().size());
    }

    @Test
    public void aClockSetBackAnHourShowsNothingTwice() {
        reminders.sync(daily("2026-03-02", 2));
        phone.until("2026-03-02T20:30");
        assertEquals(1, phone.titles().size());
        phone.clockSetBy(Duration.ofHours(-1));
        assertEquals(1, phone.armed().size());
        phone.until("2026-03-02T21:00");
        assertEquals(1, phone.titles().size());
    }

    @Test
    public void aClockSetForwardPastItShowsItAtOnce() {
        reminders.sync(daily("2026-03-02", 1));
        phone.clockSetBy(Duration.ofHours(12));
        assertEquals(1, phone.titles().size());
    }

    @Test
    public void aFlightOverTheDateLineKeepsTheLocalHour() {
        phone = new Phone("Pacific/Auckland", "2026-06-10T18:00");
        reminders.sync(daily("2026-06-10", 3));
        phone.until("2026-06-10T20:10");
        assertEquals(1, phone.titles().size());
        // The same evening lies ahead once more in Honolulu; it has been shown and is not shown again.
        phone.zone("Pacific/Honolulu");
        assertEquals("2026-06-09", Now.local().toLocalDate().toString());
        phone.until("2026-06-10T20:10");
        assertEquals(1, phone.titles().size());
        phone.until("2026-06-11T20:00");
        assertEquals(2, phone.titles().size());
    }

    @Test
    public void anAlarmSetUnderAnotherZoneIsSetAnewRatherThanShownEarly() {
        reminders.sync(daily("2026-03-02", 1));
        Intent early = shadowOf(phone.armed().get(0).operation).getSavedIntent();
        java.util.TimeZone.setDefault(java.util.TimeZone.getTimeZone("Atlantic/Canary"));
        Phone.set(Phone.millis("2026-03-02T19:00"));
        phone.receive(new AlarmReceiver(), early);
        assertTrue(phone.shown().isEmpty());
        assertEquals(Phone.millis("2026-03-02T20:00"), phone.armed().get(0).triggerAtTime);
    }

    @Test
    public void withoutLeaveForExactAlarmsItSetsInexactOnesAndSaysSo() {
        ShadowAlarmManager.setCanScheduleExactAlarms(false);
        new Held(phone.app).setWords(json("{\"may-come-late\":\"Reminders may come late.\"}"));
        reminders.sync(daily("2026-03-02", 1));
        assertFalse(reminders.exact());
        assertEquals("the system may move it", ShadowAlarmManager.WINDOW_HEURISTIC, phone.armed().get(0).getWindowLengthMs());
        new Notices(phone.app).makeChannels(reminders.exact());
        assertEquals("Reminders may come late.",
            phone.app.getSystemService(android.app.NotificationManager.class).getNotificationChannel(Notices.REMINDERS).getDescription());

        ShadowAlarmManager.setCanScheduleExactAlarms(true);
        phone.receive(new BootReceiver(), new Intent(AlarmManager.ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED));
        assertEquals(ShadowAlarmManager.WINDOW_EXACT, phone.armed().get(0).getWindowLengthMs());
    }

    @Test
    public void nothingRingsDuringABathAndWhatWaitedComesAfter() {
        reminders.sync(daily("2026-03-02", 1));
        phone.until("2026-03-02T19:50");
        new Held(phone.app).setBathRunning(true);
        phone.until("2026-03-02T20:20");
        assertTrue(phone.shown().isEmpty());
        BathService.end(phone.app);
        assertEquals(1, phone.titles().size());
    }

    @Test
    public void aBathThatWasKilledWithTheAppSilencesNothingForGood() {
        reminders.sync(daily("2026-03-02", 1));
        phone.until("2026-03-02T19:50");
        new Held(phone.app).setBathRunning(true);
        phone.until("2026-03-02T21:49");
        assertTrue(phone.shown().isEmpty());
        phone.until("2026-03-02T22:05");
        assertEquals(1, phone.titles().size());
    }

    @Test
    public void aDamagedMemoryIsLikeAnEmptyOne() {
        phone.app.getSharedPreferences("held", 0).edit().putString("wanted", "[{\"key\":1").putString("answers", "{").commit();
        reminders.rearm();
        assertTrue(phone.armed().isEmpty());
        assertEquals(new JSONArray().toString(), new Held(phone.app).answers().toString());
    }

    private static org.json.JSONObject json(String text) {
        try {
            return new org.json.JSONObject(text);
        } catch (org.json.JSONException e) {
            throw new AssertionError(e);
        }
    }
}
