package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertThrows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.json.JSONArray;
import org.json.JSONException;
import org.json.JSONObject;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.annotation.Config;

/** Which sites are still asked about: dates and keys alone. */
@RunWith(RobolectricTestRunner.class) // for JSON
@Config(application = android.app.Application.class)
public class AskedTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private final List<Asked> all = List.of(new Asked("hands", "Hands", ""), new Asked("feet", "Feet", "2026-03-02"), new Asked("armpits", "Armpits", "2026-03-01"));

    private List<String> open(LocalDate day, JSONArray waiting) {
        List<String> out = new ArrayList<>();
        for (Asked a : Asked.open(all, day, waiting))
            out.add(a.site);
        return out;
    }

    private static JSONArray waiting(String key, String answer) throws JSONException {
        return new JSONArray().put(new JSONObject().put("key", key).put("answer", answer));
    }

    @Test
    public void aSiteReportedOnThatDayIsNotAskedAbout() {
        assertEquals(List.of("hands", "armpits"), open(DAY, new JSONArray()));
        assertEquals("the next day asks about all", List.of("hands", "feet", "armpits"), open(DAY.plusDays(1), new JSONArray()));
    }

    @Test
    public void anAnswerThatTheAppHasNotTakenCounts() throws Exception {
        for (String level : Asked.LEVELS)
            assertEquals(level, List.of("armpits"), open(DAY, waiting("check-in:hands:2026-03-02", level)));
        assertEquals("for its day alone", List.of("hands", "armpits"), open(DAY, waiting("check-in:hands:2026-03-01", "dry")));
        assertEquals("for all sites", List.of(), open(DAY, waiting("check-in:2026-03-02", "dry")));
        assertEquals("put off is not answered", List.of("hands", "armpits"), open(DAY, waiting("check-in:hands:2026-03-02", "later")));
        assertEquals("what cannot be read", List.of("hands", "armpits"), open(DAY, new JSONArray().put(1).put("dry").put(new JSONObject())));
    }

    @Test
    public void itReadsWhatTheAppSends() throws Exception {
        Asked one = Asked.from(new JSONArray("[{\"site\":\"hands\",\"name\":\"Hände\",\"answered\":\"\"}]")).get(0);
        assertEquals("hands", one.site);
        assertEquals("Hände", one.name);
        assertEquals("check-in:hands:2026-03-02", one.key(DAY));
        assertThrows(JSONException.class, () -> Asked.from(new JSONArray("[{\"site\":\"hands\"}]")));
    }
}
