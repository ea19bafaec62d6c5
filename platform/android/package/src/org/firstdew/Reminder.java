package org.firstdew;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.json.JSONArray;
import org.json.JSONException;
import org.json.JSONObject;

/** One reminder that the system shows at a local time. */
final class Reminder {
    static final List<String> LEVELS = Collections.unmodifiableList(Arrays.asList("dry", "clammy", "wet", "dripping"));

    final String key;
    final LocalDateTime at;
    final String title;
    final String text;
    /** The labels of its buttons by id (a level, later, start), in order. */
    final Map<String, String> actions;

    Reminder(String key, LocalDateTime at, String title, String text, Map<String, String> actions) {
        this.key = key;
        this.at = at;
        this.title = title;
        this.text = text;
        this.actions = actions;
    }

    /** Whether it asks how the skin is: then it has a button for each level. */
    boolean asks() {
        return actions.keySet().containsAll(LEVELS);
    }

    static Reminder from(JSONObject json) throws JSONException {
        Map<String, String> actions = new LinkedHashMap<>();
        JSONArray list = json.getJSONArray("actions");
        for (int i = 0; i < list.length(); ++i)
            actions.put(list.getJSONObject(i).getString("id"), list.getJSONObject(i).getString("label"));
        return new Reminder(json.getString("key"), LocalDateTime.parse(json.getString("at")), json.getString("title"),
            json.getString("text"), actions);
    }

    JSONObject json() throws JSONException {
        JSONArray list = new JSONArray();
        for (Map.Entry<String, String> a : actions.entrySet())
            list.put(new JSONObject().put("id", a.getKey()).put("label", a.getValue()));
        return new JSONObject().put("key", key).put("at", at.toString()).put("title", title).put("text", text).put("actions", list);
    }

    Reminder at(LocalDateTime other) {
        return new Reminder(key, other, title, text, actions);
    }

    /** The instant at which the local time is {@code at}. A time that daylight saving skips comes at the change. */
    long millis(ZoneId zone) {
        return at.atZone(zone).toInstant().toEpochMilli();
    }
}
