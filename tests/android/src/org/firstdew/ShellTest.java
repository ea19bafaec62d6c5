package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Activity;
import android.content.pm.ActivityInfo;
import android.content.pm.PackageManager;
import android.graphics.Insets;
import android.os.Build;
import android.provider.Settings;
import android.view.HapticFeedbackConstants;
import android.view.View;
import android.view.WindowInsets;
import android.window.OnBackInvokedCallback;
import android.window.OnBackInvokedDispatcher;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Paths;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.RuntimeEnvironment;
import org.robolectric.android.controller.ActivityController;
import org.robolectric.annotation.Config;
import org.robolectric.util.ReflectionHelpers;

/** What the phone says about its edges, its clock and its way back. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class ShellTest {
    private final List<String> told = new ArrayList<>();

    @Before
    public void setUp() {
        new Phone("Europe/Madrid", "2026-03-02T09:00");
        Bridge.teller = told::add;
    }

    /** An activity that keeps what was registered with it. */
    public static class Window extends Activity implements OnBackInvokedDispatcher {
        final List<OnBackInvokedCallback> registered = new ArrayList<>();

        @Override
        public OnBackInvokedDispatcher getOnBackInvokedDispatcher() {
            return this;
        }

        @Override
        public void registerOnBackInvokedCallback(int priority, OnBackInvokedCallback callback) {
            assertEquals(PRIORITY_DEFAULT, priority);
            registered.add(callback);
        }

        @Override
        public void unregisterOnBackInvokedCallback(OnBackInvokedCallback callback) {
            assertTrue(registered.remove(callback));
        }
    }

    private static void back(Activity activity, boolean leads) throws Exception {
        Bridge.ask(activity, "back", new JSONObject().put("leads", leads).toString());
    }

    @Test
    public void theWayBackIsTheAppsOnlyWhileItHasSomethingToLeave() throws Exception {
        Window window = Robolectric.buildActivity(Window.class).get();
        back(window, false);
        assertEquals(0, window.registered.size()); // the system shows where the way back leads
        back(window, true);
        back(window, true);
        assertEquals(1, window.registered.size());
        window.registered.get(0).onBackInvoked();
        assertEquals(List.of("back"), told);
        back(window, false);
        assertEquals(0, window.registered.size());
        back(window, true);
        Window next = Robolectric.buildActivity(Window.class).get(); // the system made the activity anew
        back(next, true);
        assertEquals(0, window.registered.size());
        assertEquals(1, next.registered.size());
        back(next, false);
    }

    @Test
    public void beforeAndroid13TheWayBackComesAsAKey() throws Exception {
        Window window = Robolectric.buildActivity(Window.class).get();
        int now = Build.VERSION.SDK_INT;
        ReflectionHelpers.setStaticField(Build.VERSION.class, "SDK_INT", 32);
        try {
            back(window, true);
        } finally {
            ReflectionHelpers.setStaticField(Build.VERSION.class, "SDK_INT", now);
        }
        assertEquals(0, window.registered.size());
    }

    @Test
    public void theManifestAsksForTheNewWayBack() throws Exception {
        String manifest = new String(Files.readAllBytes(Paths.get("package/AndroidManifest.xml")), StandardCharsets.UTF_8);
        assertTrue(manifest.contains("android:enableOnBackInvokedCallback=\"true\""));
    }

    /** Large screens of Android 16 ignore what an app says against their shape; here nothing is said. */
    @Test
    public void noScreenIsRefused() throws Exception {
        String manifest = new String(Files.readAllBytes(Paths.get("package/AndroidManifest.xml")), StandardCharsets.UTF_8);
        for (String refusal : new String[] {"resizeableActivity=\"false\"", "AspectRatio", "requiresSmallestWidthDp", "ScreensOnly",
            "Screens=\"false\""})
            assertFalse(refusal, manifest.contains(refusal));
        int activities = 0;
        for (ActivityInfo activity : RuntimeEnvironment.getApplication().getPackageManager()
            .getPackageInfo("org.firstdew", PackageManager.GET_ACTIVITIES).activities) {
            assertEquals(activity.name, ActivityInfo.SCREEN_ORIENTATION_UNSPECIFIED, activity.screenOrientation);
            ++activities;
        }
        assertEquals(5, activities);
        for (String change : new String[] {"orientation", "screenLayout", "screenSize", "smallestScreenSize", "density"})
            assertTrue("the window may change without a new start: " + change,
                Pattern.compile("configChanges=\"[^\"]*\\b" + change + "\\b").matcher(manifest).find());
    }

    @Test
    public void theEdgesAreThoseThatTheWindowHasNotKeptFreeInDeviceIndependentPixels() throws Exception {
        Activity activity = Robolectric.setupActivity(Activity.class);
        Bridge.ask(activity, "insets", "{}");
        View view = activity.findViewById(android.R.id.content);
        float density = activity.getResources().getDisplayMetrics().density;
        told.clear();
        WindowInsets insets = new WindowInsets.Builder()
            .setInsets(WindowInsets.Type.statusBars(), Insets.of(0, 30, 0, 0))
            .setInsets(WindowInsets.Type.displayCutout(), Insets.of(0, 47, 0, 0))
            .setInsets(WindowInsets.Type.navigationBars(), Insets.of(0, 0, 0, 34)).build();
        view.dispatchApplyWindowInsets(insets);
        JSONObject edges = new JSONObject(Bridge.ask(activity, "insets", "{}"));
        assertEquals(0, edges.getDouble("left"), 0);
        assertEquals(47 / density, edges.getDouble("top"), 1e-6);
        assertEquals(34 / density, edges.getDouble("bottom"), 1e-6);
        assertEquals(List.of("insets"), told);
        view.dispatchApplyWindowInsets(insets);
        assertEquals(1, told.size()); // nothing new
        view.dispatchApplyWindowInsets(new WindowInsets.Builder().build());
        assertEquals(0, new JSONObject(Bridge.ask(activity, "insets", "{}")).getDouble("top"), 0);
    }

    /** What comes to the app of 30 pixels above and 34 below that the system's bars take of the whole window. */
    private static JSONObject underTheBars(int target) throws Exception {
        ActivityController<Activity> made = Robolectric.buildActivity(Activity.class);
        Activity activity = made.get();
        activity.setTheme(android.R.style.Theme_DeviceDefault_NoActionBar);
        activity.getApplicationInfo().targetSdkVersion = target;
        made.setup();
        Bridge.ask(activity, "insets", "{}");
        activity.getWindow().getDecorView().dispatchApplyWindowInsets(new WindowInsets.Builder()
            .setInsets(WindowInsets.Type.statusBars(), Insets.of(0, 30, 0, 0))
            .setInsets(WindowInsets.Type.navigationBars(), Insets.of(0, 0, 0, 34)).build());
        return new JSONObject(Bridge.ask(activity, "insets", "{}"));
    }

    /** From Android 15 on, the window of an app with such a target keeps nothing free itself. */
    @Test
    public void whatTheBarsTakeComesToTheAppThatIsDrawnUnderThem() throws Exception {
        int target = RuntimeEnvironment.getApplication().getApplicationInfo().targetSdkVersion;
        assertTrue(String.valueOf(target), target >= 35);
        float density = RuntimeEnvironment.getApplication().getResources().getDisplayMetrics().density;
        JSONObject edges = underTheBars(target);
        assertEquals(30 / density, edges.getDouble("top"), 1e-6);
        assertEquals(34 / density, edges.getDouble("bottom"), 1e-6);
        assertEquals("kept free by the window", 0, underTheBars(34).getDouble("top"), 0);
    }

    @Test
    public void theClockCountsTheHoursAsTheSettingSays() throws Exception {
        Activity activity = Robolectric.setupActivity(Activity.class);
        Settings.System.putString(activity.getContentResolver(), Settings.System.TIME_12_24, "12");
        assertFalse(new JSONObject(Bridge.ask(activity, "clock", "{}")).getBoolean("twentyFour"));
        Settings.System.putString(activity.getContentResolver(), Settings.System.TIME_12_24, "24");
        assertTrue(new JSONObject(Bridge.ask(activity, "clock", "{}")).getBoolean("twentyFour"));
    }

    @Test
    public void aTickIsTheSystemsOwnTouchFeedback() throws Exception {
        Activity activity = Robolectric.setupActivity(Activity.class);
        View view = activity.getWindow().getDecorView();
        assertEquals(-1, shadowOf(view).lastHapticFeedbackPerformed());
        Bridge.ask(activity, "tick", "{}");
        assertEquals(HapticFeedbackConstants.CONFIRM, shadowOf(view).lastHapticFeedbackPerformed());
    }
}
