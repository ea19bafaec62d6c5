package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertNull;
import static org.junit.Assert.assertThrows;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Activity;
import android.app.KeyguardManager;
import android.content.Intent;
import android.os.Bundle;

import java.util.ArrayList;
import java.util.List;

import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.android.controller.ActivityController;
import org.robolectric.annotation.Config;

/** The phone's own lock, asked for by the app lock. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class OwnerTest {
    private Phone phone;
    private final List<String> told = new ArrayList<>();

    @Before
    public void setUp() {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        Bridge.teller = told::add;
    }

    private void locked(boolean secure) {
        shadowOf(phone.app.getSystemService(KeyguardManager.class)).setIsDeviceSecure(secure);
    }

    private boolean available() throws Exception {
        return new JSONObject(Bridge.ask(phone.app, "lock", "{}")).getBoolean("secure");
    }

    private ActivityController<OwnerActivity> asked() throws Exception {
        Bridge.ask(phone.app, "confirm", "{\"why\":\"Open Firstdew\"}");
        Intent started = shadowOf(phone.app).getNextStartedActivity();
        assertEquals(OwnerActivity.class.getName(), started.getComponent().getClassName());
        return Robolectric.buildActivity(OwnerActivity.class, started);
    }

    private static Intent systemsPage(ActivityController<OwnerActivity> activity) {
        return shadowOf(activity.get()).getNextStartedActivity();
    }

    @Test
    public void aPhoneWithoutALockIsAskedForNone() throws Exception {
        locked(false);
        assertFalse(available());
        assertThrows(IllegalStateException.class, () -> Bridge.ask(phone.app, "confirm", "{\"why\":\"\"}"));
        assertNull(shadowOf(phone.app).getNextStartedActivity());
        locked(true);
        assertTrue(available());
    }

    @Test
    public void theSystemsOwnPageAsksAndItsAnswerAloneConfirms() throws Exception {
        locked(true);
        for (int result : new int[] {Activity.RESULT_CANCELED, Activity.RESULT_FIRST_USER, Activity.RESULT_OK}) {
            ActivityController<OwnerActivity> activity = asked().create();
            Intent page = systemsPage(activity);
            assertEquals("Open Firstdew", page.getCharSequenceExtra(KeyguardManager.EXTRA_DESCRIPTION).toString());
            assertTrue(told.isEmpty());
            activity.get().onActivityResult(1, result, null);
            assertTrue(activity.get().isFinishing());
            assertEquals(result == Activity.RESULT_OK ? List.of("owner") : List.of("no-owner"), told);
            told.clear();
        }
    }

    @Test
    public void aTurnOfThePhoneAsksOnce() throws Exception {
        locked(true);
        assertNull(systemsPage(asked().create(new Bundle())));
        assertTrue(told.isEmpty());
    }
}
