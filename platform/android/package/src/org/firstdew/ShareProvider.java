package org.firstdew;

import android.content.ContentProvider;
import android.content.ContentValues;
import android.content.Context;
import android.content.Intent;
import android.database.Cursor;
import android.database.MatrixCursor;
import android.net.Uri;
import android.os.ParcelFileDescriptor;
import android.provider.OpenableColumns;

import java.io.File;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;

/**
 * Lets an app that the person chose read the one file shared with it. It never gives access to the record or to another
 * file, and never for writing. Not exported: a reader needs the permission that comes with the share.
 */
public final class ShareProvider extends ContentProvider {
    static final long KEPT_MILLIS = 60 * 60 * 1000L;
    private static final Map<String, String> TYPES = new HashMap<>();

    static {
        TYPES.put("pdf", "application/pdf");
        TYPES.put("csv", "text/csv");
        TYPES.put("json", "application/json");
        TYPES.put("ics", "text/calendar");
        TYPES.put("pgp", "application/pgp-encrypted");
        TYPES.put("svg", "image/svg+xml");
    }

    /** Offers the file to the apps that accept its type. */
    static void share(Context context, File file, String type) throws IOException {
        Uri uri = lend(context, file);
        Intent send = new Intent(Intent.ACTION_SEND).setType(type).putExtra(Intent.EXTRA_STREAM, uri)
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION);
        // The chooser passes the permission on only through the clip.
        send.setClipData(android.content.ClipData.newRawUri(null, uri));
        context.startActivity(Intent.createChooser(send, null).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK));
    }

    /** Opens the file in the app for its type. Throws if there is none. */
    static void open(Context context, File file) throws IOException {
        Uri uri = lend(context, file);
        context.startActivity(new Intent(Intent.ACTION_VIEW).setDataAndType(uri, typeOf(file.getName()))
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION | Intent.FLAG_ACTIVITY_NEW_TASK));
    }

    /** The address under which others may read a copy of the file. A copy, so that the shared content cannot change. */
    private static Uri lend(Context context, File file) throws IOException {
        if (!file.isFile())
            throw new FileNotFoundException(file.getPath());
        dropOld(context);
        File copy = new File(folder(context), file.getName());
        Files.copy(file.toPath(), copy.toPath(), StandardCopyOption.REPLACE_EXISTING);
        return new Uri.Builder().scheme("content").authority(context.getPackageName() + ".share").appendPath(copy.getName()).build();
    }

    /** Deletes old shared copies. Recent ones stay, because another app may still read them. */
    private static void dropOld(Context context) {
        File[] copies = folder(context).listFiles();
        for (File copy : copies == null ? new File[0] : copies)
            if (copy.lastModified() < Now.millis() - KEPT_MILLIS)
                copy.delete();
    }

    /** Deletes every shared copy, also one that another app may still want to read. */
    static void dropAll(Context context) {
        File[] copies = folder(context).listFiles();
        for (File copy : copies == null ? new File[0] : copies)
            copy.delete();
    }

    static File folder(Context context) {
        File folder = new File(context.getCacheDir(), "shared");
        folder.mkdirs();
        return folder;
    }

    private File fileOf(Uri uri) throws FileNotFoundException {
        try {
            File folder = folder(getContext()).getCanonicalFile();
            String name = uri.getLastPathSegment();
            File file = new File(folder, name == null ? "" : name).getCanonicalFile();
            if (uri.getPathSegments().size() != 1 || !folder.equals(file.getParentFile()) || !file.isFile())
                throw new FileNotFoundException(uri.toString());
            return file;
        } catch (IOException unreadable) {
            throw new FileNotFoundException(uri.toString());
        }
    }

    @Override
    public ParcelFileDescriptor openFile(Uri uri, String mode) throws FileNotFoundException {
        if (!"r".equals(mode))
            throw new FileNotFoundException("for reading alone");
        return ParcelFileDescriptor.open(fileOf(uri), ParcelFileDescriptor.MODE_READ_ONLY);
    }

    @Override
    public Cursor query(Uri uri, String[] columns, String where, String[] arguments, String order) {
        File file;
        try {
            file = fileOf(uri);
        } catch (FileNotFoundException none) {
            return null;
        }
        String[] asked = columns == null ? new String[] {OpenableColumns.DISPLAY_NAME, OpenableColumns.SIZE} : columns;
        MatrixCursor cursor = new MatrixCursor(asked, 1);
        MatrixCursor.RowBuilder row = cursor.newRow();
        for (String column : asked)
            row.add(OpenableColumns.DISPLAY_NAME.equals(column) ? file.getName() : OpenableColumns.SIZE.equals(column) ? file.length() : null);
        return cursor;
    }

    @Override
    public String getType(Uri uri) {
        return typeOf(String.valueOf(uri.getLastPathSegment()));
    }

    static String typeOf(String name) {
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        return type == null ? "application/octet-stream" : type;
    }

    @Override
    public boolean onCreate() {
        return true;
    }

    @Override
    public Uri insert(Uri uri, ContentValues values) {
        throw new UnsupportedOperationException("for reading alone");
    }

    @Override
    public int delete(Uri uri, String where, String[] arguments) {
        throw new UnsupportedOperationException("for reading alone");
    }

    @Override
    public int update(Uri uri, ContentValues values, String where, String[] arguments) {
        throw new UnsupportedOperationException("for reading alone");
    }
}
