package org.firstdew;

import android.app.Activity;
import android.app.KeyguardManager;
import android.content.Context;
import android.content.Intent;
import android.os.Bundle;

/** Has the system confirm by the phone's own lock that its owner is there. The app never sees what is given. */
public final class OwnerActivity extends Activity {
    private static final int REQUEST = 1;
    private static final String WHY = "why";

    /** Whether the phone has a lock: a PIN, a pattern or a password, with or without a finger or a face. */
    static boolean secure(Context context) {
        return context.getSystemService(KeyguardManager.class).isDeviceSecure();
    }

    /** The answer is told to the running app: {@code owner} or {@code no-owner}. */
    static void start(Context context, String why) {
        if (!secure(context))
            throw new IllegalStateException("the phone has no lock");
        context.startActivity(new Intent(context, OwnerActivity.class).putExtra(WHY, why).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK));
    }

    @Override
    protected void onCreate(Bundle state) {
        super.onCreate(state);
        if (state != null) // after a turn of the phone the system's page is still open
            return;
        Intent page = systemsPage(getIntent().getStringExtra(WHY));
        if (page != null) {
            startActivityForResult(page, REQUEST);
            return;
        }
        Bridge.tell("no-owner"); // the lock was taken away in between
        finish();
    }

    /** The one way that every Android from 8 on has, also where its newer dialogs do not take a PIN. */
    @SuppressWarnings("deprecation")
    private Intent systemsPage(String why) {
        return getSystemService(KeyguardManager.class).createConfirmDeviceCredentialIntent(null, why);
    }

    @Override
    protected void onActivityResult(int request, int result, Intent data) {
        Bridge.tell(request == REQUEST && result == RESULT_OK ? "owner" : "no-owner");
        finish();
    }
}
