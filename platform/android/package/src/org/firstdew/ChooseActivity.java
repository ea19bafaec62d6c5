package org.firstdew;

import android.app.Activity;
import android.content.ContentResolver;
import android.content.Context;
import android.content.Intent;
import android.database.Cursor;
import android.net.Uri;
import android.os.Bundle;
import android.provider.OpenableColumns;

import java.io.File;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;

/**
 * Opens the system's document picker and copies the chosen document into the app's own cache, where C++ can read it by
 * name. The copy is deleted before the next one is made.
 */
public final class ChooseActivity extends Activity {
    /** Larger documents are no back-up; the record's own limit is lower. */
    static final long MOST_BYTES = 256L * 1024 * 1024;
    private static final int REQUEST = 1;

    static void start(Context context) {
        new Held(context).forgetChosen();
        context.startActivity(new Intent(context, ChooseActivity.class).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK));
    }

    @Override
    protected void onCreate(Bundle state) {
        super.onCreate(state);
        // After a turn of the phone the picker is still open.
        if (state == null)
            startActivityForResult(new Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("*/*"), REQUEST);
    }

    @Override
    protected void onActivityResult(int request, int result, Intent data) {
        String path = "";
        Uri uri = result == RESULT_OK && data != null ? data.getData() : null;
        try {
            if (uri != null)
                path = copyOf(uri).getPath();
        } catch (IOException | RuntimeException unreadable) {
            path = "";
        }
        new Held(this).setChosen(path);
        finish();
    }

    private File copyOf(Uri uri) throws IOException {
        File folder = emptied(this);
        File copy = new File(folder, nameOf(uri));
        if (!folder.getCanonicalFile().equals(copy.getCanonicalFile().getParentFile()))
            throw new FileNotFoundException(uri.toString());
        try (InputStream in = getContentResolver().openInputStream(uri); OutputStream out = Files.newOutputStream(copy.toPath())) {
            if (in == null)
                throw new FileNotFoundException(uri.toString());
            byte[] part = new byte[64 * 1024];
            long all = 0;
            for (int n = in.read(part); n >= 0; n = in.read(part)) {
                all += n;
                if (all > MOST_BYTES)
                    throw new IOException("too large");
                out.write(part, 0, n);
            }
        } catch (IOException | RuntimeException failed) {
            copy.delete();
            throw failed;
        }
        return copy;
    }

    private String nameOf(Uri uri) {
        ContentResolver resolver = getContentResolver();
        try (Cursor cursor = resolver.query(uri, new String[] {OpenableColumns.DISPLAY_NAME}, null, null, null)) {
            String name = cursor != null && cursor.moveToFirst() ? cursor.getString(0) : null;
            return name == null || name.isEmpty() ? "chosen" : new File(name).getName();
        }
    }

    static File emptied(Context context) {
        File folder = new File(context.getCacheDir(), "chosen");
        folder.mkdirs();
        File[] before = folder.listFiles();
        for (File old : before == null ? new File[0] : before)
            old.delete();
        return folder;
    }
}
