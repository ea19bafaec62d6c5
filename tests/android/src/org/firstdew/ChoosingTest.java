package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Activity;
import android.content.Intent;
import android.net.Uri;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;

import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.android.controller.ActivityController;
import org.robolectric.annotation.Config;

/** The system's document picker, and the copy of what was chosen. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class ChoosingTest {
    private static final Uri DOCUMENT = Uri.parse("content://somebody/documents/7");
    private Phone phone;

    @Before
    public void setUp() {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
    }

    private JSONObject chosen() throws Exception {
        return new JSONObject(Bridge.ask(phone.app, "chosen", "{}"));
    }

    private ActivityController<ChooseActivity> asked() throws Exception {
        Bridge.ask(phone.app, "choose", "{}");
        Intent started = shadowOf(phone.app).getNextStartedActivity();
        assertEquals(ChooseActivity.class.getName(), started.getComponent().getClassName());
        ActivityController<ChooseActivity> activity = Robolectric.buildActivity(ChooseActivity.class, started).create();
        Intent picker = shadowOf(activity.get()).getNextStartedActivity();
        assertEquals(Intent.ACTION_OPEN_DOCUMENT, picker.getAction());
        assertTrue(picker.hasCategory(Intent.CATEGORY_OPENABLE));
        return activity;
    }

    private void answer(ActivityController<ChooseActivity> activity, int result, Uri uri) {
        activity.get().onActivityResult(1, result, uri == null ? null : new Intent().setData(uri));
        assertTrue(activity.get().isFinishing());
    }

    @Test
    public void theChosenDocumentIsCopiedAndToldOnce() throws Exception {
        ActivityController<ChooseActivity> activity = asked();
        assertFalse(chosen().getBoolean("answered"));
        shadowOf(phone.app.getContentResolver()).registerInputStream(DOCUMENT, new ByteArrayInputStream("sealed".getBytes(StandardCharsets.UTF_8)));
        answer(activity, Activity.RESULT_OK, DOCUMENT);
        JSONObject told = chosen();
        assertTrue(told.getBoolean("answered"));
        File copy = new File(told.getString("path"));
        assertEquals("sealed", new String(Files.readAllBytes(copy.toPath()), StandardCharsets.UTF_8));
        assertTrue(copy.getPath().startsWith(phone.app.getCacheDir().getPath()));
        assertFalse(chosen().getBoolean("answered"));

        // The next choice leaves no copy of the one before.
        answer(asked(), Activity.RESULT_CANCELED, null);
        assertEquals("", chosen().getString("path"));
        shadowOf(phone.app.getContentResolver()).registerInputStream(DOCUMENT, new ByteArrayInputStream("other".getBytes(StandardCharsets.UTF_8)));
        answer(asked(), Activity.RESULT_OK, DOCUMENT);
        File next = new File(chosen().getString("path"));
        assertEquals(1, next.getParentFile().listFiles().length);
    }

    @Test
    public void whatCannotBeReadIsNotChosen() throws Exception {
        answer(asked(), Activity.RESULT_OK, Uri.parse("file:///nowhere/at-all"));
        JSONObject told = chosen();
        assertTrue(told.getBoolean("answered"));
        assertEquals("", told.getString("path"));
    }
}
