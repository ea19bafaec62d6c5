package org.firstdew;

import android.app.Activity;
import android.content.Context;
import android.graphics.Insets;
import android.os.Build;
import android.view.View;
import android.view.WindowInsets;

import org.json.JSONException;
import org.json.JSONObject;

/**
 * What notch, rounded corners and the system's bars take of the app's view. The view hears only of what the window has not
 * kept free already, so that nothing is kept free twice.
 */
final class Edges {
    private static View watched;
    private static volatile double left;
    private static volatile double top;
    private static volatile double right;
    private static volatile double bottom;

    private Edges() {}

    /** In device-independent pixels, as last told by the system. Begins to listen if nobody does yet. */
    static JSONObject of(Context context) throws JSONException {
        if (context instanceof Activity)
            ((Activity) context).runOnUiThread(new Runnable() {
                @Override
                public void run() {
                    watch((Activity) context);
                }
            });
        return new JSONObject().put("left", left).put("top", top).put("right", right).put("bottom", bottom);
    }

    private static void watch(Activity activity) {
        View view = activity.findViewById(android.R.id.content);
        if (view == null || view == watched)
            return;
        watched = view;
        view.setOnApplyWindowInsetsListener(new View.OnApplyWindowInsetsListener() {
            @Override
            public WindowInsets onApplyWindowInsets(View of, WindowInsets insets) {
                take(insets, activity.getResources().getDisplayMetrics().density);
                return of.onApplyWindowInsets(insets); // whoever is inside hears of them too
            }
        });
        view.requestApplyInsets();
    }

    @SuppressWarnings("deprecation") // needed before Android 11
    private static void take(WindowInsets insets, float density) {
        int[] pixels = {insets.getSystemWindowInsetLeft(), insets.getSystemWindowInsetTop(), insets.getSystemWindowInsetRight(),
            insets.getSystemWindowInsetBottom()};
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.R) {
            Insets kept = insets.getInsets(WindowInsets.Type.systemBars() | WindowInsets.Type.displayCutout());
            pixels = new int[] {kept.left, kept.top, kept.right, kept.bottom};
        }
        boolean same = left == pixels[0] / density && top == pixels[1] / density && right == pixels[2] / density
            && bottom == pixels[3] / density;
        if (same)
            return;
        left = pixels[0] / density;
        top = pixels[1] / density;
        right = pixels[2] / density;
        bottom = pixels[3] / density;
        Bridge.tell("insets");
    }
}
