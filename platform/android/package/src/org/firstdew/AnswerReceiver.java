package org.firstdew;

import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

import java.time.temporal.ChronoUnit;

import org.json.JSONException;
import org.json.JSONObject;

/**
 * Receives an answer given on a notification and stores it with its time. The app writes it into the record when it
 * runs next, so that the record has only one writer.
 */
public final class AnswerReceiver extends BroadcastReceiver {
    @Override
    public void onReceive(Context context, Intent intent) {
        String what = intent.getAction();
        if (what == null || intent.getData() == null)
            return;
        String key = intent.getData().getSchemeSpecificPart();
        Reminders reminders = new Reminders(context);
        switch (what) {
            case "dry":
            case "clammy":
            case "wet":
            case "dripping":
                reminders.done(key);
                break;
            case "later":
                reminders.later(key);
                break;
            default:
                return;
        }
        try {
            new Held(context).addAnswer(new JSONObject().put("key", key).put("answer", what)
                .put("at", Now.local().truncatedTo(ChronoUnit.MINUTES).toString()).put("recorded", Now.millis()));
        } catch (JSONException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
