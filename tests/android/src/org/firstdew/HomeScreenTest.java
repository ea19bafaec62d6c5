package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.PendingIntent;
import android.appwidget.AppWidgetManager;
import android.appwidget.AppWidgetProviderInfo;
import android.content.ComponentName;
import android.content.Context;
import android.content.Intent;
import android.content.pm.PackageManager;
import android.content.pm.ServiceInfo;
import android.content.res.Configuration;
import android.content.res.XmlResourceParser;
import android.os.Build;
import android.os.Looper;
import android.view.View;
import android.view.ViewGroup;
import android.widget.TextView;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.json.JSONArray;
import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.annotation.Config;
import org.robolectric.shadows.ShadowAppWidgetManager;
import org.robolectric.util.ReflectionHelpers;
import org.xmlpull.v1.XmlPullParser;

/** What stands outside the app: the widget, the tile and the launcher's shortcuts. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class HomeScreenTest {
    private static final String WORDS = "{\"dry\":\"Seco\",\"clammy\":\"Húmedo\",\"wet\":\"Mojado\",\"dripping\":\"Goteando\",\"widget-done\":\"Listo por hoy\"}";
    private Phone phone;
    private ShadowAppWidgetManager widgets;

    @Before
    public void setUp() {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
        widgets = shadowOf(AppWidgetManager.getInstance(phone.app));
    }

    /** The app tells of these sites: site, name, day of the report. */
    private void told(String... sites) throws Exception {
        JSONArray asked = new JSONArray();
        for (int i = 0; i < sites.length; i += 3)
            asked.put(new JSONObject().put("site", sites[i]).put("name", sites[i + 1]).put("answered", sites[i + 2]));
        Bridge.ask(phone.app, "sync", new JSONObject().put("words", new JSONObject(WORDS)).put("wanted", new JSONArray()).put("asked", asked).toString());
    }

    private int placed() {
        return widgets.createWidget(CheckInWidget.class, Own.id(phone.app, "layout", "widget"));
    }

    private View named(int widget, String name) {
        return widgets.getViewFor(widget).findViewById(Own.id(phone.app, "id", name));
    }

    private List<String> texts(View view) {
        List<String> out = new ArrayList<>();
        if (view.getVisibility() != View.VISIBLE)
            return out;
        if (view instanceof TextView)
            out.add(((TextView) view).getText().toString());
        if (view instanceof ViewGroup)
            for (int i = 0; i < ((ViewGroup) view).getChildCount(); ++i)
                out.addAll(texts(((ViewGroup) view).getChildAt(i)));
        return out;
    }

    private List<String> seen(int widget) {
        return texts(widgets.getViewFor(widget));
    }

    /** The button of that level in the row of that number. */
    private TextView button(int widget, int row, String level) {
        return ((ViewGroup) named(widget, "widget_sites")).getChildAt(row).findViewById(Own.id(phone.app, "id", "widget_" + level));
    }

    private void tap(View button) {
        assertTrue(button.performClick());
        shadowOf(Looper.getMainLooper()).idle();
    }

    @Test
    public void eachSiteNotAnsweredTodayHasItsFourLevelsInThePersonsWords() throws Exception {
        told("hands", "Manos", "", "feet", "Pies", "2026-03-02", "armpits", "Axilas", "2026-03-01");
        assertEquals(List.of("Manos", "Seco", "Húmedo", "Mojado", "Goteando", "Axilas", "Seco", "Húmedo", "Mojado", "Goteando"), seen(placed()));
    }

    @Test
    public void aTapIsAnAnswerForThatSiteAloneAndItsRowGoes() throws Exception {
        told("hands", "Manos", "", "feet", "Pies", "");
        int widget = placed();
        assertEquals("Pies: Mojado", button(widget, 1, "wet").getContentDescription());
        tap(button(widget, 1, "wet"));
        JSONArray answers = new JSONObject(Bridge.ask(phone.app, "answers", "{}")).getJSONArray("answers");
        assertEquals(1, answers.length());
        assertEquals("check-in:feet:2026-03-02", answers.getJSONObject(0).getString("key"));
        assertEquals("wet", answers.getJSONObject(0).getString("answer"));
        assertEquals("2026-03-02T09:00", answers.getJSONObject(0).getString("at"));
        assertEquals(List.of("Manos", "Seco", "Húmedo", "Mojado", "Goteando"), seen(widget));
        tap(button(widget, 0, "dripping"));
        assertEquals("what was answered is not for whoever looks", List.of("Listo por hoy"), seen(widget));
    }

    @Test
    public void theReminderOfThatSiteGoesWithTheAnswer() throws Exception {
        new Reminders(phone.app).sync(List.of(Phone.checkIn("2026-03-02T20:00")));
        phone.until("2026-03-02T20:00");
        assertEquals(1, phone.shown().size());
        new Held(phone.app).setAsked(new JSONArray("[{\"site\":\"hands\",\"name\":\"Manos\",\"answered\":\"\"}]"));
        tap(button(placed(), 0, "dry"));
        assertEquals(0, phone.shown().size());
    }

    @Test
    public void theNextDayAsksAgainAndWakesNoPhone() throws Exception {
        told("hands", "Manos", "2026-03-02");
        int widget = placed();
        assertEquals(List.of("Listo por hoy"), seen(widget));
        assertEquals(1, phone.armed().size());
        assertEquals(Phone.millis("2026-03-03T00:00"), phone.armed().get(0).triggerAtTime);
        assertEquals(android.app.AlarmManager.RTC, phone.armed().get(0).type);
        Phone.set(Phone.millis("2026-03-03T06:30"));
        phone.receive(new CheckInWidget(), shadowOf(phone.armed().get(0).operation).getSavedIntent());
        assertEquals("Manos", seen(widget).get(0));
        assertEquals(Phone.millis("2026-03-04T00:00"), phone.armed().get(0).triggerAtTime);
        tap(button(widget, 0, "dry"));
        assertEquals("check-in:hands:2026-03-03", new Held(phone.app).answers().getJSONObject(0).getString("key"));
    }

    @Test
    public void theWidgetFollowsAChangeOfTheClock() throws Exception {
        told("hands", "Manos", "2026-03-02");
        int widget = placed();
        phone.clockSetBy(java.time.Duration.ofDays(1));
        assertEquals("Manos", seen(widget).get(0));
    }

    @Test
    public void beforeTheAppHasRunTheWidgetSaysSoInTheLanguageOfThePhone() {
        assertEquals(List.of("Open Firstdew to begin"), seen(placed()));
    }

    @Test
    public void withoutAWidgetNothingIsSet() throws Exception {
        told("hands", "Manos", "");
        assertTrue(phone.armed().isEmpty());
    }

    @Test
    public void aTapBesideTheLevelsOpensTheCheckIn() throws Exception {
        told("hands", "Manos", "");
        tap(named(placed(), "widget"));
        assertOpensToday(shadowOf(phone.app).getNextStartedActivity());
    }

    private void assertOpensToday(Intent intent) throws Exception {
        assertEquals(new ComponentName(phone.app, OpenActivity.class), intent.getComponent());
        Robolectric.buildActivity(OpenActivity.class, intent).create();
        assertEquals("today", new JSONObject(Bridge.ask(phone.app, "place", "{}")).getString("place"));
    }

    @Test
    public void theWidgetIsForTheHomeScreenAloneAndIsNotAskedForByTheClock() throws Exception {
        String space = "http://schemas.android.com/apk/res/android";
        try (XmlResourceParser info = phone.app.getResources().getXml(Own.id(phone.app, "xml", "widget"))) {
            while (info.getEventType() != XmlPullParser.START_TAG)
                info.next();
            assertEquals(AppWidgetProviderInfo.WIDGET_CATEGORY_HOME_SCREEN, info.getAttributeIntValue(space, "widgetCategory", 0));
            assertEquals(0, info.getAttributeIntValue(space, "updatePeriodMillis", -1));
            for (String layout : new String[] {"initialLayout", "previewLayout"})
                assertTrue(layout, info.getAttributeResourceValue(space, layout, 0) != 0);
        }
    }

    @Test
    public void eachLevelHasItsRipplesAndAHeightForAFinger() throws Exception {
        told("hands", "Manos", "");
        int widget = placed();
        float density = phone.app.getResources().getDisplayMetrics().density;
        for (String level : Asked.LEVELS) {
            TextView button = button(widget, 0, level);
            assertTrue(level, button.getCompoundDrawables()[1] != null);
            assertTrue(level, button.getLayoutParams().height >= 48 * density);
        }
    }

    /** A tile, and what it asked the system to open. */
    private CheckInTile tile(List<PendingIntent> opened) throws Exception {
        CheckInTile tile = Robolectric.buildService(CheckInTile.class).create().get();
        Class<?> system = Class.forName("android.service.quicksettings.IQSService");
        ReflectionHelpers.setField(tile, "mService", Proxy.newProxyInstance(system.getClassLoader(), new Class<?>[] {system}, (self, method, given) -> {
            if ("startActivity".equals(method.getName()))
                opened.add((PendingIntent) given[1]);
            return null;
        }));
        return tile;
    }

    @Test
    public void theTileOpensTheCheckInOnAnUnlockedPhone() throws Exception {
        List<PendingIntent> opened = new ArrayList<>();
        CheckInTile tile = tile(opened);
        tile.onStartListening();
        tile.onClick();
        assertEquals(1, opened.size());
        assertOpensToday(shadowOf(opened.get(0)).getSavedIntent());
    }

    @Test
    public void theTileOpensTheCheckInBeforeAndroid14Too() throws Exception {
        ReflectionHelpers.setStaticField(Build.VERSION.class, "SDK_INT", Build.VERSION_CODES.O);
        tile(new ArrayList<>()).onClick();
        assertOpensToday(shadowOf(phone.app).getNextStartedActivity());
    }

    @Test
    public void theTileOnALockedPhoneAsksToUnlockFirst() throws Exception {
        List<PendingIntent> opened = new ArrayList<>();
        CheckInTile tile = tile(opened);
        shadowOf(tile).setLocked(true);
        tile.onClick();
        assertFalse("the stand-in for the system unlocks when it is asked to", tile.isLocked());
        assertEquals(1, opened.size());
    }

    @Test
    public void theSystemAloneMayBindTheTile() throws Exception {
        ServiceInfo tile = phone.app.getPackageManager().getServiceInfo(new ComponentName(phone.app, CheckInTile.class), PackageManager.GET_META_DATA);
        assertEquals("android.permission.BIND_QUICK_SETTINGS_TILE", tile.permission);
        assertTrue(tile.exported);
    }

    /** Attributes and extras of each shortcut: id, label and the place that it opens. */
    private List<List<String>> shortcuts(Context context) throws Exception {
        String space = "http://schemas.android.com/apk/res/android";
        List<List<String>> out = new ArrayList<>();
        try (XmlResourceParser xml = context.getResources().getXml(Own.id(context, "xml", "shortcuts"))) {
            for (; xml.getEventType() != XmlPullParser.END_DOCUMENT; xml.next()) {
                if (xml.getEventType() != XmlPullParser.START_TAG)
                    continue;
                if ("shortcut".equals(xml.getName()))
                    out.add(new ArrayList<>(List.of(xml.getAttributeValue(space, "shortcutId"),
                        context.getString(xml.getAttributeResourceValue(space, "shortcutShortLabel", 0)))));
                else if ("intent".equals(xml.getName()))
                    assertEquals(OpenActivity.class, Class.forName(xml.getAttributeValue(space, "targetClass")));
                else if ("extra".equals(xml.getName())) {
                    assertEquals(OpenActivity.PLACE, xml.getAttributeValue(space, "name"));
                    out.get(out.size() - 1).add(xml.getAttributeValue(space, "value"));
                }
            }
        }
        return out;
    }

    @Test
    public void theLauncherOffersCheckInAndStart() throws Exception {
        assertEquals(List.of(List.of("check-in", "Check in", "today"), List.of("start", "Start a session", "bath")), shortcuts(phone.app));
    }

    @Test
    public void theTextsOfTheSystemComeInEachLanguageOfTheApp() throws Exception {
        for (String language : new String[] {"de", "es", "fr", "pt-BR", "ar"}) {
            Configuration there = new Configuration(phone.app.getResources().getConfiguration());
            there.setLocale(Locale.forLanguageTag(language));
            Context context = phone.app.createConfigurationContext(there);
            for (String name : new String[] {"check_in", "start_session", "widget_about", "widget_begin"})
                assertFalse(language + " " + name,
                    context.getString(Own.id(context, "string", name)).equals(phone.app.getString(Own.id(phone.app, "string", name))));
        }
    }
}
