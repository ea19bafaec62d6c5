package org.firstdew;

import android.app.Activity;
import android.content.Intent;
import android.os.Bundle;

/** Handles a tapped notification: stores the place it belongs to, opens the app and ends. It shows nothing itself. */
public final class OpenActivity extends Activity {
    static final String PLACE = "org.firstdew.PLACE";

    @Override
    protected void onCreate(Bundle state) {
        super.onCreate(state);
        String place = getIntent().getStringExtra(PLACE);
        if (place != null)
            new Held(this).setPlace(place);
        Intent app = getPackageManager().getLaunchIntentForPackage(getPackageName());
        if (app != null)
            startActivity(app);
        finish();
    }
}
