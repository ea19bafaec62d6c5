package org.firstdew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.json.JSONArray;
import org.json.JSONException;
import org.json.JSONObject;

/** A site that the check-in asks about, as the app said last. */
final class Asked {
    /** The answers of a check-in, from dry to wet. Words of the app, in its order. */
    static final List<String> LEVELS = Collections.unmodifiableList(Arrays.asList("dry", "clammy", "wet", "dripping"));

    final String site;
    /** In the person's language. */
    final String name;
    /** The day of the report that the app has; empty if it has none of its last day. */
    final String answered;

    Asked(String site, String name, String answered) {
        this.site = site;
        this.name = name;
        this.answered = answered;
    }

    static List<Asked> from(JSONArray list) throws JSONException {
        List<Asked> out = new ArrayList<>();
        for (int i = 0; i < list.length(); ++i) {
            JSONObject one = list.getJSONObject(i);
            out.add(new Asked(one.getString("site"), one.getString("name"), one.getString("answered")));
        }
        return out;
    }

    /** The key of the check-in of that site and day, which the app's reminders have too. */
    String key(LocalDate day) {
        return "check-in:" + site + ":" + day;
    }

    /** Those not answered on that day, neither in the app nor by an answer that it has not taken yet. */
    static List<Asked> open(List<Asked> all, LocalDate day, JSONArray waiting) {
        Set<String> given = new HashSet<>();
        for (int i = 0; i < waiting.length(); ++i) {
            JSONObject answer = waiting.optJSONObject(i);
            if (answer != null && LEVELS.contains(answer.optString("answer")))
                given.add(answer.optString("key"));
        }
        String forAll = "check-in:" + day;
        List<Asked> out = new ArrayList<>();
        for (Asked a : all)
            if (!a.answered.equals(day.toString()) && !given.contains(a.key(day)) && !given.contains(forAll))
                out.add(a);
        return out;
    }
}
