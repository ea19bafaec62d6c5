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
 * What is held while the app is closed, in the app's own preferences: the reminders wanted, those shown already, the
 * person's words for channels, and answers given from notifications that the app has not yet taken in.
 * Written with commit(), so that it is there after the process is killed.
 */
final class Held {
    /** Longer than any bath; our own choice. */
    static final long BATH_MILLIS = 2 * 60 * 60 * 1000L;
    private static final String FILE = "held";
    private final SharedPreferences kept;

    Held(Context context) {
        kept = context.getSharedPreferences(FILE, Context.MODE_PRIVATE);
    }

    /** By key, in the order in which they were wanted. */
    Map<String, Reminder> wanted() {
        Map<String, Reminder> out = new LinkedHashMap<>();
        try {
            JSONArray list = new JSONArray(kept.getString("wanted", "[]"));
            for (int i = 0; i < list.length(); ++i) {
                Reminder r = Reminder.from(list.getJSONObject(i));
                out.put(r.key, r);
            }
        } catch (JSONException | RuntimeException damaged) {
            // The app says anew what it wants each time that it opens.
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

    /** The words of a channel or a line in the person's language; the id itself before the app has said any. */
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

    /** Each step of a bath says so anew; one that has said nothing for hours was killed with the app. */
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

    /** The place that a tapped notification is about, once. */
    String takePlace() {
        String place = kept.getString("place", "");
        kept.edit().remove("place").commit();
        return place;
    }

    void setPlace(String place) {
        kept.edit().putString("place", place).commit();
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

    /** Forgets the first {@code count} answers: those that the app has written into the record. */
    void dropAnswers(int count) {
        JSONArray all = answers();
        List<Object> rest = new ArrayList<>();
        for (int i = Math.max(0, count); i < all.length(); ++i)
            rest.add(all.opt(i));
        kept.edit().putString("answers", new JSONArray(rest).toString()).commit();
    }
}
