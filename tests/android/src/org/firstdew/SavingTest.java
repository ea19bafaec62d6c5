package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Activity;
import android.content.Intent;
import android.net.Uri;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;

import org.json.JSONArray;
import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.android.controller.ActivityController;
import org.robolectric.annotation.Config;

/** The system's document picker asks where to save, and the file is there whole or not at all. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class SavingTest {
    private static final Uri DOCUMENT = Uri.parse("content://somebody/document/7");
    private Phone phone;
    private File file;

    @Before
    public void setUp() throws IOException {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        file = new File(phone.app.getCacheDir(), "firstdew-2026-03-02.pgp");
        Files.write(file.toPath(), "sealed".getBytes(StandardCharsets.UTF_8));
    }

    private JSONObject saved() throws Exception {
        return new JSONObject(Bridge.ask(phone.app, "saved", "{}"));
    }

    private ActivityController<SaveActivity> asked(String action, File... files) throws Exception {
        JSONArray paths = new JSONArray();
        for (File f : files)
            paths.put(f.getPath());
        Bridge.ask(phone.app, "save", new JSONObject().put("files", paths).toString());
        Intent started = shadowOf(phone.app).getNextStartedActivity();
        assertEquals(SaveActivity.class.getName(), started.getComponent().getClassName());
        ActivityController<SaveActivity> activity = Robolectric.buildActivity(SaveActivity.class, started).create();
        Intent picker = shadowOf(activity.get()).getNextStartedActivity();
        assertEquals(action, picker.getAction());
        if (files.length == 1) {
            assertEquals(files[0].getName(), picker.getStringExtra(Intent.EXTRA_TITLE));
            assertTrue(picker.hasCategory(Intent.CATEGORY_OPENABLE));
        }
        return activity;
    }

    private void answer(ActivityController<SaveActivity> activity, int result, Uri uri) {
        activity.get().onActivityResult(1, result, uri == null ? null : new Intent().setData(uri));
        assertTrue(activity.get().isFinishing());
    }

    @Test
    public void theFileIsCopiedToThePlaceThatWasChosenAndThatIsToldOnce() throws Exception {
        ActivityController<SaveActivity> activity = asked(Intent.ACTION_CREATE_DOCUMENT, file);
        assertFalse(saved().getBoolean("answered"));
        ByteArrayOutputStream there = new ByteArrayOutputStream();
        shadowOf(phone.app.getContentResolver()).registerOutputStream(DOCUMENT, there);
        answer(activity, Activity.RESULT_OK, DOCUMENT);
        assertEquals("sealed", new String(there.toByteArray(), StandardCharsets.UTF_8));
        JSONObject told = saved();
        assertTrue(told.getBoolean("answered"));
        assertFalse(told.getBoolean("failed"));
        assertEquals(file.getName(), told.getString("where"));
        assertFalse(saved().getBoolean("answered"));
    }

    @Test
    public void whoeverCancelsSavesNothing() throws Exception {
        answer(asked(Intent.ACTION_CREATE_DOCUMENT, file), Activity.RESULT_CANCELED, null);
        JSONObject told = saved();
        assertTrue(told.getBoolean("answered"));
        assertFalse(told.getBoolean("failed"));
        assertEquals("", told.getString("where"));
    }

    @Test
    public void aPlaceThatCannotBeWrittenIsToldAndNothingHalfStays() throws Exception {
        ActivityController<SaveActivity> activity = asked(Intent.ACTION_CREATE_DOCUMENT, file);
        shadowOf(phone.app.getContentResolver()).registerOutputStream(DOCUMENT, new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("no room");
            }
        });
        answer(activity, Activity.RESULT_OK, DOCUMENT);
        JSONObject told = saved();
        assertTrue(told.getBoolean("answered"));
        assertTrue(told.getBoolean("failed"));
    }

    @Test
    public void severalFilesAskForAFolder() throws Exception {
        File second = new File(phone.app.getCacheDir(), "firstdew-2026-03-02-sessions.csv");
        Files.write(second.toPath(), new byte[0]);
        ActivityController<SaveActivity> activity = asked(Intent.ACTION_OPEN_DOCUMENT_TREE, file, second);
        answer(activity, Activity.RESULT_OK, Uri.parse("content://nobody/tree/1"));
        assertTrue(saved().getBoolean("failed"));
    }

    @Test
    public void copiesAreDroppedWhenTheAppSays() throws Exception {
        File shared = new File(ShareProvider.folder(phone.app), "a.pdf");
        Files.write(shared.toPath(), new byte[] {1});
        Bridge.ask(phone.app, "drop-copies", "{}");
        assertFalse(shared.exists());
    }
}
