package org.firstdew;

import android.content.Context;
import android.content.SharedPreferences;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.json.JSONArray;
import org.json.JSONException;
import org.json.JSONObject;

/**
 * What the app's preferences hold while the app is closed: the wanted reminders, the keys already shown, texts in the
 * person's language, the sites of the check-in, and answers from notifications and the widget that the app has not read yet.
 * Uses commit(), so that a killed process loses nothing.
 */
final class Held {
    /** Longer than any session (our own choice). */
    static final long BATH_MILLIS = 2 * 60 * 60 * 1000L;
    private static final String FILE = "held";
    private final SharedPreferences kept;

    Held(Context context) {
        kept = context.getSharedPreferences(FILE, Context.MODE_PRIVATE);
    }

    /** By key, in the order in which the app asked for them. */
    Map<String, Reminder> wanted() {
        Map<String, Reminder> out = new LinkedHashMap<>();
        try {
            JSONArray list = new JSONArray(kept.getString("wanted", "[]"));
            for (int i = 0; i < list.length(); ++i) {
                Reminder r = Reminder.from(list.getJSONObject(i));
                out.put(r.key, r);
            }
        } catch (JSONException | RuntimeException damaged) {
            // The app sends its reminders again each time it opens.
            return new LinkedHashMap<>();
        }
        return out;
    }

    void setWanted(Iterable<Reminder> wanted) {
        JSONArray list = new JSONArray();
        try {
            for (Reminder r : wanted)
                list.put(r.json());
        } catch (JSONException impossible) {
            throw new IllegalStateException(impossible);
        }
        kept.edit().putString("wanted", list.toString()).commit();
    }

    Set<String> shown() {
        return new HashSet<>(kept.getStringSet("shown", new HashSet<>()));
    }

    void setShown(Set<String> shown) {
        kept.edit().putStringSet("shown", new HashSet<>(shown)).commit();
    }

    void addShown(String key) {
        Set<String> shown = shown();
        shown.add(key);
        setShown(shown);
    }

    /** The text of an id in the person's language, or the id itself before the app has sent any texts. */
    String word(String id) {
        return kept.getString("word." + id, id);
    }

    void setWords(JSONObject words) {
        SharedPreferences.Editor edit = kept.edit();
        for (java.util.Iterator<String> ids = words.keys(); ids.hasNext();) {
            String id = ids.next();
            edit.putString("word." + id, words.optString(id));
        }
        edit.commit();
    }

    /** Each step of a session renews this. A session without a new step for hours was killed with the app. */
    boolean bathRunning() {
        long silent = Now.millis() - kept.getLong("bath", Long.MIN_VALUE / 2);
        return silent >= 0 && silent < BATH_MILLIS;
    }

    void setBathRunning(boolean running) {
        if (running)
            kept.edit().putLong("bath", Now.millis()).commit();
        else
            kept.edit().remove("bath").commit();
    }

    /** Returns the place of a tapped notification and forgets it. */
    String takePlace() {
        String place = kept.getString("place", "");
        kept.edit().remove("place").commit();
        return place;
    }

    void setPlace(String place) {
        kept.edit().putString("place", place).commit();
    }

    /** The sites that the check-in asks about. */
    List<Asked> asked() {
        try {
            return Asked.from(new JSONArray(kept.getString("asked", "[]")));
        } catch (JSONException damaged) {
            return new ArrayList<>();
        }
    }

    void setAsked(JSONArray asked) {
        kept.edit().putString("asked", asked.toString()).commit();
    }

    /** What the person chose in the document picker: a path, or nothing. Told once. */
    JSONObject takeChosen() throws JSONException {
        String path = kept.getString("chosen", null);
        forgetChosen();
        return new JSONObject().put("answered", path != null).put("path", path == null ? "" : path);
    }

    void setChosen(String path) {
        kept.edit().putString("chosen", path).commit();
    }

    void forgetChosen() {
        kept.edit().remove("chosen").commit();
    }

    /** What became of a file to be saved: where it went, or nothing if the person chose no place. Told once. */
    JSONObject takeSaved() throws JSONException {
        String where = kept.getString("saved", null);
        boolean failed = kept.getBoolean("save-failed", false);
        forgetSaved();
        return new JSONObject().put("answered", where != null).put("where", where == null ? "" : where).put("failed", failed);
    }

    void setSaved(String where, boolean failed) {
        kept.edit().putString("saved", where).putBoolean("save-failed", failed).commit();
    }

    void forgetSaved() {
        kept.edit().remove("saved").remove("save-failed").commit();
    }

    void addAnswer(JSONObject answer) {
        JSONArray answers = answers();
        answers.put(answer);
        kept.edit().putString("answers", answers.toString()).commit();
    }

    JSONArray answers() {
        try {
            return new JSONArray(kept.getString("answers", "[]"));
        } catch (JSONException damaged) {
            return new JSONArray();
        }
    }

    /** Drops the first {@code count} answers, which the app has written into the record. */
    void dropAnswers(int count) {
        JSONArray all = answers();
        List<Object> rest = new ArrayList<>();
        for (int i = Math.max(0, count); i < all.length(); ++i)
            rest.add(all.opt(i));
        kept.edit().putString("answers", new JSONArray(rest).toString()).commit();
    }
}
