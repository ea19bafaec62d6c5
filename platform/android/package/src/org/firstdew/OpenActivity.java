package org.firstdew;

import android.app.Activity;
import android.content.Intent;
import android.os.Bundle;

/** A notification was tapped: notes the place that it is about, opens the app and is gone. It shows nothing itself. */
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
