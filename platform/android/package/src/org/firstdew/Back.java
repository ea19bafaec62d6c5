package org.firstdew;

import android.app.Activity;
import android.content.Context;
import android.os.Build;
import android.window.OnBackInvokedCallback;
import android.window.OnBackInvokedDispatcher;

/**
 * The system's way back from Android 13 on. The app takes it only while it has something to leave; otherwise the system
 * shows where it leads before the finger lets go. Before Android 13 it comes to the app as a key.
 */
final class Back {
    private static Object taken; // an OnBackInvokedCallback, a class that earlier systems do not have
    private static Activity by;

    private Back() {}

    static void take(Context context, boolean leads) {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.TIRAMISU || !(context instanceof Activity))
            return;
        Activity activity = (Activity) context;
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                set(activity, leads);
            }
        });
    }

    private static void set(Activity activity, boolean leads) {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.TIRAMISU || leads == (taken != null && by == activity))
            return;
        if (taken != null)
            by.getOnBackInvokedDispatcher().unregisterOnBackInvokedCallback((OnBackInvokedCallback) taken);
        taken = null;
        by = null;
        if (!leads)
            return;
        OnBackInvokedCallback back = new OnBackInvokedCallback() {
            @Override
            public void onBackInvoked() {
                Bridge.tell("back");
            }
        };
        activity.getOnBackInvokedDispatcher().registerOnBackInvokedCallback(OnBackInvokedDispatcher.PRIORITY_DEFAULT, back);
        taken = back;
        by = activity;
    }
}
