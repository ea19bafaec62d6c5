package org.firstdew;

import android.Manifest;
import android.app.Activity;
import android.content.Context;
import android.os.Build;
import android.provider.Settings;
import android.view.HapticFeedbackConstants;
import android.view.WindowManager;
import android.view.accessibility.AccessibilityManager;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.json.JSONArray;
import org.json.JSONObject;

/** The only entry from C++ to Java: a verb and a JSON document in, a JSON document out. */
public final class Bridge {
    private Bridge() {}

    /** The app's own function, which it makes known when it starts. */
    private static native void told(String what);

    /** Tells the running app what the person did outside it: {@code stop}, {@code answered}, {@code back}, {@code insets},
     * {@code spoken}, {@code unspoken}, {@code owner} or {@code no-owner}. False if it does not run. */
    static boolean tell(String what) {
        try {
            teller.accept(what);
            return true;
        } catch (UnsatisfiedLinkError notRunning) {
            return false;
        }
    }

    /** Tests put somebody else in the app's place. */
    static Consumer<String> teller = new Consumer<String>() {
        @Override
        public void accept(String what) {
            told(what);
        }
    };

    /**
     * Verbs: {@code sync}, {@code answers}, {@code taken}, {@code bath}, {@code bath-over}, {@code share}, {@code open}, {@code vibrator},
     * {@code choose}, {@code chosen}, {@code save}, {@code saved}, {@code drop-copies}, {@code vibrate}, {@code awake}, {@code veil}, {@code leave}, {@code place}, {@code tick}, {@code insets},
     * {@code clock}, {@code back}, {@code still}, {@code reader}, {@code announce}, {@code alive}, {@code speak}, {@code speak-no-more},
     * {@code lock}, {@code confirm}.
     * The answer is ASCII only, because JNI uses modified UTF-8.
     *
     * @throws Exception if the verb fails; C++ reports it
     */
    public static String ask(Context context, String verb, String document) throws Exception {
        return ascii(answer(context, verb, new JSONObject(document)).toString());
    }

    private static JSONObject answer(Context context, String verb, JSONObject in) throws Exception {
        JSONObject out = new JSONObject();
        switch (verb) {
            case "sync":
                return sync(context, in);
            case "answers":
                return out.put("answers", new Held(context).answers());
            case "taken":
                new Held(context).dropAnswers(in.getInt("count"));
                return out; // the widget follows with the next sync, which knows what became of them
            case "bath":
                BathService.show(context, in.getString("title"), in.getString("stop"), in.getLong("end"));
                return out;
            case "alive":
                Watch.alive();
                return out;
            case "speak":
                ClipSpeaker.speak(context, in.getString("language"), in.getString("text"), new File(in.getString("file")));
                return out;
            case "speak-no-more":
                ClipSpeaker.drop();
                return out;
            case "bath-over":
                BathService.end(context);
                return out;
            case "share":
                ShareProvider.share(context, new File(in.getString("file")), in.getString("type"));
                return out;
            case "open":
                ShareProvider.open(context, new File(in.getString("file")));
                return out;
            case "choose":
                ChooseActivity.start(context);
                return out;
            case "chosen":
                return new Held(context).takeChosen();
            case "save":
                SaveActivity.start(context, in.getJSONArray("files"));
                return out;
            case "saved":
                return new Held(context).takeSaved();
            case "drop-copies":
                ChooseActivity.emptied(context);
                ShareProvider.dropAll(context);
                return out;
            case "tick":
                tick(context);
                return out;
            case "insets":
                return Edges.of(context);
            case "clock":
                return out.put("twentyFour", android.text.format.DateFormat.is24HourFormat(context));
            case "back":
                Back.take(context, in.getBoolean("leads"));
                return out;
            case "vibrator":
                return out.put("present", new Motor(context).present());
            case "vibrate":
                new Motor(context).shake(in.getJSONArray("timings"));
                return out;
            case "awake":
                keepAwake(context, in.getBoolean("on"));
                new Loudness(context).aboveOthers(in.getBoolean("on"));
                return out;
            case "veil":
                veil(context);
                return out;
            case "lock":
                return out.put("secure", OwnerActivity.secure(context));
            case "confirm":
                OwnerActivity.start(context, in.getString("why"));
                return out;
            case "place":
                return out.put("place", new Held(context).takePlace());
            case "still": // a scale of zero is how the system asks for no motion
                return out.put("still", Settings.Global.getFloat(context.getContentResolver(), Settings.Global.ANIMATOR_DURATION_SCALE, 1) == 0);
            case "reader": // one that speaks takes touches first
                return out.put("on", context.getSystemService(AccessibilityManager.class).isTouchExplorationEnabled());
            case "announce":
                announce(context, in.getString("text"));
                return out;
            case "leave":
                askLeave(context);
                return out;
            default:
                throw new IllegalArgumentException(verb);
        }
    }

    private static JSONObject sync(Context context, JSONObject in) throws Exception {
        JSONArray asked = in.getJSONArray("asked");
        Asked.from(asked); // refused before anything is stored
        JSONArray list = in.getJSONArray("wanted");
        List<Reminder> wanted = new ArrayList<>();
        for (int i = 0; i < list.length(); ++i)
            wanted.add(Reminder.from(list.getJSONObject(i)));
        Held held = new Held(context);
        held.setWords(in.getJSONObject("words"));
        held.setAsked(asked);
        Reminders reminders = new Reminders(context);
        new Notices(context).makeChannels(reminders.exact());
        reminders.sync(wanted);
        CheckInWidget.refresh(context);
        return new JSONObject().put("exact", reminders.exact()).put("allowed", new Notices(context).allowed());
    }

    /** Asks the person for permission to notify, on systems that require it. */
    private static void askLeave(Context context) {
        if (context instanceof Activity && Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU)
            ((Activity) context).requestPermissions(new String[] {Manifest.permission.POST_NOTIFICATIONS}, 1);
    }

    /** The system leaves this out where the person switched touch feedback off. */
    private static void tick(Context context) {
        if (!(context instanceof Activity))
            return;
        Activity activity = (Activity) context;
        int kind = Build.VERSION.SDK_INT >= Build.VERSION_CODES.R ? HapticFeedbackConstants.CONFIRM : HapticFeedbackConstants.VIRTUAL_KEY;
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                activity.getWindow().getDecorView().performHapticFeedback(kind);
            }
        });
    }

    private static void announce(Context context, String text) {
        if (!(context instanceof Activity))
            return;
        Activity activity = (Activity) context;
        activity.runOnUiThread(new Runnable() {
            @Override
            @SuppressWarnings("deprecation") // Android 16 wants texts that are views; ours are drawn
            public void run() {
                activity.getWindow().getDecorView().announceForAccessibility(text);
            }
        });
    }

    private static void keepAwake(Context context, boolean on) {
        if (!(context instanceof Activity))
            return;
        Activity activity = (Activity) context;
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                if (on)
                    activity.getWindow().addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
                else
                    activity.getWindow().clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
            }
        });
    }

    /** Hides the record in the list of recent apps. Screenshots stay possible on systems that can tell them apart. */
    private static void veil(Context context) {
        if (!(context instanceof Activity))
            return;
        Activity activity = (Activity) context;
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU)
                    activity.setRecentsScreenshotEnabled(false);
                else
                    activity.getWindow().addFlags(WindowManager.LayoutParams.FLAG_SECURE);
            }
        });
    }

    private static String ascii(String json) {
        StringBuilder out = new StringBuilder();
        for (char c : json.toCharArray())
            out.append(c < 128 ? String.valueOf(c) : String.format("\\u%04x", (int) c));
        return out.toString();
    }
}
