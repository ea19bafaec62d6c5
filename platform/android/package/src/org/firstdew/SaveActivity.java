package org.firstdew;

import android.app.Activity;
import android.content.ContentResolver;
import android.content.Context;
import android.content.Intent;
import android.database.Cursor;
import android.net.Uri;
import android.os.Bundle;
import android.provider.DocumentsContract;
import android.provider.OpenableColumns;

import java.io.File;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;

import org.json.JSONArray;
import org.json.JSONException;

/**
 * Asks with the system's document picker where to save and copies the app's files there: one into a document of a name
 * that the person may change, several into a folder. A document that cannot be written whole is deleted again.
 */
public final class SaveActivity extends Activity {
    private static final int REQUEST = 1;
    private static final String FILES = "files";

    static void start(Context context, JSONArray files) throws JSONException {
        String[] paths = new String[files.length()];
        for (int i = 0; i < paths.length; ++i)
            paths[i] = files.getString(i);
        new Held(context).forgetSaved();
        context.startActivity(new Intent(context, SaveActivity.class).putExtra(FILES, paths).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK));
    }

    @Override
    protected void onCreate(Bundle state) {
        super.onCreate(state);
        // After a turn of the phone the picker is still open.
        if (state != null)
            return;
        String[] paths = paths();
        if (paths.length == 1) {
            String name = new File(paths[0]).getName();
            startActivityForResult(new Intent(Intent.ACTION_CREATE_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE)
                .setType(ShareProvider.typeOf(name)).putExtra(Intent.EXTRA_TITLE, name), REQUEST);
        } else {
            startActivityForResult(new Intent(Intent.ACTION_OPEN_DOCUMENT_TREE), REQUEST);
        }
    }

    @Override
    protected void onActivityResult(int request, int result, Intent data) {
        Uri chosen = result == RESULT_OK && data != null ? data.getData() : null;
        if (chosen == null)
            new Held(this).setSaved("", false);
        else
            save(chosen);
        finish();
    }

    private String[] paths() {
        return getIntent().getStringArrayExtra(FILES);
    }

    private void save(Uri chosen) {
        String[] paths = paths();
        boolean one = paths.length == 1;
        List<Uri> made = new ArrayList<>();
        try {
            Uri folder = one ? null : DocumentsContract.buildDocumentUriUsingTree(chosen, DocumentsContract.getTreeDocumentId(chosen));
            for (String path : paths) {
                File file = new File(path);
                Uri document = one ? chosen
                    : DocumentsContract.createDocument(getContentResolver(), folder, ShareProvider.typeOf(file.getName()), file.getName());
                if (document == null)
                    throw new FileNotFoundException(file.getName());
                made.add(document);
                copy(file, document);
            }
            new Held(this).setSaved(nameOf(one ? chosen : folder), false);
        } catch (IOException | RuntimeException failed) {
            for (Uri document : made)
                delete(document);
            new Held(this).setSaved(String.valueOf(chosen.getLastPathSegment()), true);
        }
    }

    private void copy(File from, Uri to) throws IOException {
        // Emptied first: a longer document of that name would keep its end.
        try (OutputStream out = getContentResolver().openOutputStream(to, "wt")) {
            if (out == null)
                throw new FileNotFoundException(to.toString());
            Files.copy(from.toPath(), out);
        }
    }

    private void delete(Uri document) {
        try {
            DocumentsContract.deleteDocument(getContentResolver(), document);
        } catch (FileNotFoundException | RuntimeException gone) {
            // Nothing is left that could be deleted.
        }
    }

    /** The name that the person sees in the picker. */
    private String nameOf(Uri uri) {
        ContentResolver resolver = getContentResolver();
        try (Cursor cursor = resolver.query(uri, new String[] {OpenableColumns.DISPLAY_NAME}, null, null, null)) {
            String name = cursor != null && cursor.moveToFirst() ? cursor.getString(0) : null;
            return name == null || name.isEmpty() ? new File(paths()[0]).getName() : name;
        } catch (RuntimeException untold) {
            return new File(paths()[0]).getName();
        }
    }
}
