package org.firstdew;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Objects;

import org.json.JSONException;
import org.json.JSONObject;

/** One reminder that the app wants the system to show, at a time of the person's own day. */
final class Reminder {
    /** What the notification offers besides opening the app. */
    enum Offer { NOTHING, CHECK_IN, START }

    final String key;
    final LocalDateTime at;
    final String title;
    final String text;
    final Offer offer;

    Reminder(String key, LocalDateTime at, String title, String text, Offer offer) {
        this.key = key;
        this.at = at;
        this.title = title;
        this.text = text;
        this.offer = offer;
    }

    static Reminder from(JSONObject json) throws JSONException {
        return new Reminder(json.getString("key"), LocalDateTime.parse(json.getString("at")), json.getString("title"),
            json.getString("text"), Offer.valueOf(json.getString("offer")));
    }

    JSONObject json() throws JSONException {
        return new JSONObject().put("key", key).put("at", at.toString()).put("title", title).put("text", text)
            .put("offer", offer.name());
    }

    /** The instant at which the person's clock shows {@code at}; a time that the clocks leap over comes as they leap. */
    long millis(ZoneId zone) {
        return at.atZone(zone).toInstant().toEpochMilli();
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Reminder))
            return false;
        Reminder r = (Reminder) other;
        return key.equals(r.key) && at.equals(r.at) && title.equals(r.title) && text.equals(r.text) && offer == r.offer;
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, at);
    }
}
