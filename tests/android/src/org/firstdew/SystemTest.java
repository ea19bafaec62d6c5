package org.firstdew;

import static org.junit.Assert.assertArrayEquals;
import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertFalse;
import static org.junit.Assert.assertNotNull;
import static org.junit.Assert.assertNull;
import static org.junit.Assert.assertSame;
import static org.junit.Assert.assertThrows;
import static org.junit.Assert.assertTrue;
import static org.robolectric.Shadows.shadowOf;

import android.app.Activity;
import android.app.Notification;
import android.app.NotificationChannel;
import android.app.NotificationManager;
import android.content.ClipData;
import android.content.ComponentName;
import android.content.Intent;
import android.content.pm.PackageManager;
import android.content.pm.ProviderInfo;
import android.content.pm.ServiceInfo;
import android.database.Cursor;
import android.media.AudioFocusRequest;
import android.media.AudioManager;
import android.net.Uri;
import android.os.Build;
import android.os.Looper;
import android.os.PowerManager;
import android.os.VibrationAttributes;
import android.os.Vibrator;
import android.provider.Settings;
import android.view.WindowManager;
import android.view.accessibility.AccessibilityEvent;
import android.view.accessibility.AccessibilityManager;

import java.io.File;
import java.io.FileNotFoundException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.json.JSONObject;
import org.junit.Before;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.android.controller.ServiceController;
import org.robolectric.annotation.Config;
import org.robolectric.shadows.ShadowAudioManager;
import org.robolectric.shadows.ShadowPowerManager;
import org.robolectric.shadows.ShadowVibrator;
import org.robolectric.util.ReflectionHelpers;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The door from C++, sharing, the service of a running bath, and the manifest. */
@RunWith(RobolectricTestRunner.class)
@Config(application = android.app.Application.class)
public class SystemTest {
    private static final String SYNC = "{\"asked\":[{\"site\":\"hands\",\"name\":\"Hände\",\"answered\":\"\"}],\"words\":{\"channel-reminders\":\"Erinnerungen\",\"channel-bath\":\"Bad\"},"
        + "\"wanted\":[{\"key\":\"check-in:hands:2026-03-02\",\"at\":\"2026-03-02T20:00\",\"title\":\"T\",\"text\":\"x\",\"actions\":[{\"id\":\"dry\",\"label\":\"Trocken\"}]}]}";
    private Phone phone;

    @Before
    public void setUp() {
        phone = new Phone("Europe/Madrid", "2026-03-02T09:00");
    }

    @Test
    public void syncTakesWordsAndRemindersAndSaysWhatTheSystemAllows() throws Exception {
        JSONObject told = new JSONObject(Bridge.ask(phone.app, "sync", SYNC));
        assertTrue(told.has("exact"));
        assertTrue(told.getBoolean("allowed"));
        assertEquals(1, phone.armed().size());
        NotificationChannel channel = phone.app.getSystemService(NotificationManager.class).getNotificationChannel(Notices.REMINDERS);
        assertEquals("Erinnerungen", channel.getName());
        assertEquals(NotificationManager.IMPORTANCE_HIGH, channel.getImportance());
    }

    @Test
    public void whatCannotBeReadIsRefusedWhole() throws Exception {
        Bridge.ask(phone.app, "sync", SYNC);
        assertThrows(Exception.class, () -> Bridge.ask(phone.app, "sync", SYNC.replace("T20:00", " at eight")));
        assertThrows(Exception.class, () -> Bridge.ask(phone.app, "sync", "{"));
        assertThrows(Exception.class, () -> Bridge.ask(phone.app, "sync", SYNC.replace("\"name\"", "\"nom\"")));
        assertEquals("Hände", new Held(phone.app).asked().get(0).name);
        assertEquals("Bad", new Held(phone.app).word("channel-bath"));
        assertThrows(IllegalArgumentException.class, () -> Bridge.ask(phone.app, "dance", "{}"));
        assertEquals(1, phone.armed().size());
    }

    @Test
    public void answersAreAsciiAlone() throws Exception {
        new Held(phone.app).addAnswer(new JSONObject().put("key", "Ωλγα \uD83D\uDCA7"));
        String told = Bridge.ask(phone.app, "answers", "{}");
        assertTrue(told, told.chars().allMatch(c -> c < 128));
        assertEquals("Ωλγα \uD83D\uDCA7", new JSONObject(told).getJSONArray("answers").getJSONObject(0).getString("key"));
    }

    @Test
    public void theBathShowsItsCountdownAndEnds() {
        BathService.show(phone.app, "Plateau", "Stopp", Phone.millis("2026-03-02T09:10"));
        Intent started = shadowOf(phone.app).getNextStartedService();
        ServiceController<BathService> service = Robolectric.buildService(BathService.class, started).create().startCommand(0, 1);
        Notification n = shadowOf(service.get()).getLastForegroundNotification();
        assertEquals("Plateau", n.extras.getString(Notification.EXTRA_TITLE));
        assertTrue(n.extras.getBoolean(Notification.EXTRA_CHRONOMETER_COUNT_DOWN));
        assertEquals(Phone.millis("2026-03-02T09:10"), n.when);
        assertTrue((n.flags & Notification.FLAG_ONGOING_EVENT) != 0);
        assertTrue(new Held(phone.app).bathRunning());
        assertEquals("on a locked screen too", Notification.VISIBILITY_PUBLIC, n.visibility);
        assertEquals("Stop and nothing else", 1, n.actions.length);
        assertEquals("Stopp", n.actions[0].title);
        assertFalse("without unlocking first", n.actions[0].isAuthenticationRequired());
        Intent stop = shadowOf(n.actions[0].actionIntent).getSavedIntent();
        assertTrue(shadowOf(n.actions[0].actionIntent).isBroadcastIntent());
        assertEquals(new ComponentName(phone.app, StopReceiver.class), stop.getComponent());
        service.get().onTaskRemoved(null);
        assertFalse(new Held(phone.app).bathRunning());
    }

    @Test
    public void thePhoneStaysAwakeWhileASessionRunsAndNoLonger() {
        BathService.show(phone.app, "Plateau", "Stopp", 0);
        Intent started = shadowOf(phone.app).getNextStartedService();
        ServiceController<BathService> service = Robolectric.buildService(BathService.class, started).create().startCommand(0, 1);
        PowerManager.WakeLock lock = ShadowPowerManager.getLatestWakeLock();
        assertTrue(lock.isHeld());
        service.startCommand(0, 2);
        assertEquals("one lock for the whole session", lock, ShadowPowerManager.getLatestWakeLock());
        service.destroy();
        assertFalse(lock.isHeld());
    }

    @Test
    public void stopOnTheNotificationReachesTheAppWhichAloneEndsTheSession() {
        List<String> told = new ArrayList<>();
        new Held(phone.app).setBathRunning(true);
        Bridge.teller = told::add;
        phone.receive(new StopReceiver(), new Intent());
        assertEquals(List.of("stop"), told);
        assertTrue("until the app says so", new Held(phone.app).bathRunning());
    }

    @Test
    public void stopWithoutTheAppTakesTheNotificationAway() {
        new Held(phone.app).setBathRunning(true);
        phone.receive(new StopReceiver(), new Intent());
        assertFalse(new Held(phone.app).bathRunning());
        assertEquals(BathService.class.getName(), shadowOf(phone.app).getNextStoppedService().getComponent().getClassName());
    }

    @Test
    public void aRestartOfThePhoneEndsABath() {
        new Held(phone.app).setBathRunning(true);
        phone.offUntil("2026-03-02T10:00");
        assertFalse(new Held(phone.app).bathRunning());
    }

    private File shareSummary() throws Exception {
        File file = new File(phone.app.getFilesDir(), "summary 1.pdf");
        Files.write(file.toPath(), "%PDF-1.7".getBytes(StandardCharsets.US_ASCII));
        Bridge.ask(phone.app, "share", new JSONObject().put("file", file.getPath()).put("type", "application/pdf").toString());
        return file;
    }

    @Test
    public void sharingOffersACopyThatTheChosenAppAloneMayRead() throws Exception {
        File file = shareSummary();
        Intent chooser = shadowOf(phone.app).getNextStartedActivity();
        Intent send = chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent.class);
        assertEquals(Intent.ACTION_SEND, send.getAction());
        assertEquals("application/pdf", send.getType());
        assertTrue((send.getFlags() & Intent.FLAG_GRANT_READ_URI_PERMISSION) != 0);
        assertEquals(0, send.getFlags() & Intent.FLAG_GRANT_WRITE_URI_PERMISSION);
        ClipData clip = send.getClipData();
        Uri uri = send.getParcelableExtra(Intent.EXTRA_STREAM, Uri.class);
        assertEquals(uri, clip.getItemAt(0).getUri());

        ShareProvider provider = Robolectric.setupContentProvider(ShareProvider.class);
        try (InputStream in = new android.os.ParcelFileDescriptor.AutoCloseInputStream(provider.openFile(uri, "r"))) {
            assertArrayEquals(Files.readAllBytes(file.toPath()), in.readAllBytes());
        }
        assertEquals("application/pdf", provider.getType(uri));
        try (Cursor about = provider.query(uri, null, null, null, null)) {
            assertTrue(about.moveToFirst());
            assertEquals("summary 1.pdf", about.getString(0));
            assertEquals(8, about.getLong(1));
        }
    }

    @Test
    public void openingShowsACopyInTheAppForSuchFiles() throws Exception {
        File file = new File(phone.app.getFilesDir(), "summary 1.pdf");
        Files.write(file.toPath(), "%PDF-1.7".getBytes(StandardCharsets.US_ASCII));
        Bridge.ask(phone.app, "open", new JSONObject().put("file", file.getPath()).toString());
        Intent view = shadowOf(phone.app).getNextStartedActivity();
        assertEquals(Intent.ACTION_VIEW, view.getAction());
        assertEquals("application/pdf", view.getType());
        assertEquals(Intent.FLAG_GRANT_READ_URI_PERMISSION,
            view.getFlags() & (Intent.FLAG_GRANT_READ_URI_PERMISSION | Intent.FLAG_GRANT_WRITE_URI_PERMISSION));
        ShareProvider provider = Robolectric.setupContentProvider(ShareProvider.class);
        assertNotNull(provider.openFile(view.getData(), "r"));
        String folder = new JSONObject().put("file", phone.app.getFilesDir().getPath()).toString();
        assertThrows(FileNotFoundException.class, () -> Bridge.ask(phone.app, "open", folder));
        shadowOf(phone.app).checkActivities(true); // as a phone without an app for it
        String pdf = new JSONObject().put("file", file.getPath()).toString();
        assertThrows(android.content.ActivityNotFoundException.class, () -> Bridge.ask(phone.app, "open", pdf));
    }

    @Test
    public void thePhoneShakesAsAskedAndIsStillWhenTold() throws Exception {
        ShadowVibrator motor = shadowOf(phone.app.getSystemService(Vibrator.class));
        motor.setHasVibrator(true);
        assertTrue(new JSONObject(Bridge.ask(phone.app, "vibrator", "{}")).getBoolean("present"));
        Bridge.ask(phone.app, "vibrate", "{\"timings\":[0,600,200,600]}");
        assertTrue(motor.isVibrating());
        assertArrayEquals(new long[] {0, 600, 200, 600}, motor.getPattern());
        assertEquals(-1, motor.getRepeat());
        assertEquals(VibrationAttributes.USAGE_ALARM, ((VibrationAttributes) motor.getVibrationAttributesFromLastVibration()).getUsage());
        Bridge.ask(phone.app, "vibrate", "{\"timings\":[]}");
        assertTrue(motor.isCancelled());

        motor.setHasVibrator(false);
        assertFalse(new JSONObject(Bridge.ask(phone.app, "vibrator", "{}")).getBoolean("present"));
        Bridge.ask(phone.app, "vibrate", "{\"timings\":[0,60]}"); // nothing to shake with is no error
    }

    @Test
    public void thePhoneSaysWhetherAnythingMayMove() throws Exception {
        assertFalse(new JSONObject(Bridge.ask(phone.app, "still", "{}")).getBoolean("still"));
        Settings.Global.putFloat(phone.app.getContentResolver(), Settings.Global.ANIMATOR_DURATION_SCALE, 0);
        assertTrue(new JSONObject(Bridge.ask(phone.app, "still", "{}")).getBoolean("still"));
    }

    @Test
    public void aScreenReaderIsAskedForAndSaysWhatIsAnnounced() throws Exception {
        AccessibilityManager reader = phone.app.getSystemService(AccessibilityManager.class);
        assertFalse(new JSONObject(Bridge.ask(phone.app, "reader", "{}")).getBoolean("on"));
        shadowOf(reader).setEnabled(true);
        shadowOf(reader).setTouchExplorationEnabled(true);
        assertTrue(new JSONObject(Bridge.ask(phone.app, "reader", "{}")).getBoolean("on"));

        Bridge.ask(phone.app, "announce", "{\"text\":\"nobody sees it\"}"); // without a window there is nobody to tell
        Activity activity = Robolectric.setupActivity(Activity.class);
        Bridge.ask(activity, "announce", "{\"text\":\"Too high\"}");
        shadowOf(Looper.getMainLooper()).idle();
        List<AccessibilityEvent> sent = shadowOf(reader).getSentAccessibilityEvents();
        AccessibilityEvent last = sent.get(sent.size() - 1);
        assertEquals(AccessibilityEvent.TYPE_ANNOUNCEMENT, last.getEventType());
        assertEquals("Too high", last.getText().get(0).toString());
    }

    @Test
    public void aBathKeepsTheScreenOnAndOtherProgramsSoft() throws Exception {
        Activity activity = Robolectric.setupActivity(Activity.class);
        ShadowAudioManager audio = shadowOf(activity.getSystemService(AudioManager.class));
        Bridge.ask(activity, "awake", "{\"on\":true}");
        assertTrue((activity.getWindow().getAttributes().flags & WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON) != 0);
        AudioFocusRequest asked = audio.getLastAudioFocusRequest().audioFocusRequest;
        assertEquals(AudioManager.AUDIOFOCUS_GAIN_TRANSIENT_MAY_DUCK, asked.getFocusGain());
        Bridge.ask(activity, "awake", "{\"on\":false}");
        assertEquals(0, activity.getWindow().getAttributes().flags & WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
        assertSame(asked, audio.getLastAbandonedAudioFocusRequest());
    }

    /** Remembers what it was told of the list of recent apps. */
    public static final class InTheList extends Activity {
        Boolean picture;

        @Override
        public void setRecentsScreenshotEnabled(boolean enabled) {
            picture = enabled;
        }
    }

    @Test
    public void theListOfRecentAppsShowsNothingOfTheRecord() throws Exception {
        InTheList activity = Robolectric.setupActivity(InTheList.class);
        Bridge.ask(activity, "veil", "{}");
        assertEquals(Boolean.FALSE, activity.picture);
        assertEquals(0, activity.getWindow().getAttributes().flags & WindowManager.LayoutParams.FLAG_SECURE);

        ReflectionHelpers.setStaticField(Build.VERSION.class, "SDK_INT", Build.VERSION_CODES.S);
        InTheList older = Robolectric.setupActivity(InTheList.class);
        Bridge.ask(older, "veil", "{}");
        assertNull(older.picture);
        assertTrue((older.getWindow().getAttributes().flags & WindowManager.LayoutParams.FLAG_SECURE) != 0);
    }

    @Test
    public void theProviderGivesNothingElse() throws Exception {
        shareSummary();
        File record = new File(phone.app.getCacheDir(), "record.db");
        Files.write(record.toPath(), new byte[] {1});
        ShareProvider provider = Robolectric.setupContentProvider(ShareProvider.class);
        for (String path : new String[] {"..%2Frecord.db", "../record.db", "%2E%2E/record.db", "record.db", "", ".", "sub/summary%201.pdf"}) {
            Uri uri = Uri.parse("content://org.firstdew.share/" + path);
            assertThrows(path, FileNotFoundException.class, () -> provider.openFile(uri, "r"));
            assertNull(path, provider.query(uri, null, null, null, null));
        }
        Uri good = Uri.parse("content://org.firstdew.share/summary%201.pdf");
        assertNotNull(provider.openFile(good, "r"));
        for (String mode : new String[] {"w", "rw", "rwt", "wa"})
            assertThrows(mode, FileNotFoundException.class, () -> provider.openFile(good, mode));
        assertThrows(UnsupportedOperationException.class, () -> provider.delete(good, null, null));
    }

    @Test
    public void sharedCopiesDoNotLieAbout() throws Exception {
        shareSummary();
        File copy = ShareProvider.folder(phone.app).listFiles()[0];
        assertTrue(copy.setLastModified(Now.millis() - 2 * ShareProvider.KEPT_MILLIS));
        File other = new File(phone.app.getFilesDir(), "record.csv");
        Files.write(other.toPath(), new byte[] {2});
        Bridge.ask(phone.app, "share", new JSONObject().put("file", other.getPath()).put("type", "text/csv").toString());
        assertFalse(copy.exists());
    }

    private static List<Element> elements(String name) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        NodeList found = factory.newDocumentBuilder().parse(new File(System.getProperty("manifest"))).getElementsByTagName(name);
        List<Element> out = new ArrayList<>();
        for (int i = 0; i < found.getLength(); ++i)
            out.add((Element) found.item(i));
        return out;
    }

    private static String android(Element e, String attribute) {
        return e.getAttributeNS("http://schemas.android.com/apk/res/android", attribute);
    }

    @Test
    public void theManifestAsksForNoNetwork() throws Exception {
        for (Element e : elements("uses-permission"))
            if (android(e, "name").contains("INTERNET") || android(e, "name").contains("NETWORK"))
                assertEquals(android(e, "name"), "remove", e.getAttributeNS("http://schemas.android.com/tools", "node"));
        assertTrue(new String(Files.readAllBytes(new File(System.getProperty("manifest")).toPath()), StandardCharsets.UTF_8)
            .indexOf("INSERT_PERMISSIONS") < 0);
        assertEquals("false", android(elements("application").get(0), "allowBackup"));
    }

    @Test
    public void theManifestNamesOurClassesAndExportsNoneButToTheSystem() throws Exception {
        List<Element> ours = new ArrayList<>();
        for (String kind : new String[] {"receiver", "service", "provider"})
            ours.addAll(elements(kind));
        assertEquals(8, ours.size());
        for (Element e : ours) {
            Class.forName(android(e, "name"));
            boolean system = "android.permission.BIND_QUICK_SETTINGS_TILE".equals(android(e, "permission"));
            assertEquals(android(e, "name"), String.valueOf(system), android(e, "exported"));
        }
    }

    @Test
    public void theSessionGoesOnWhileTheScreenIsLocked() throws Exception {
        boolean runs = false;
        for (Element e : elements("meta-data"))
            runs = runs || android(e, "name").equals("android.app.background_running") && android(e, "value").equals("true");
        assertTrue("Qt stops its event loop otherwise", runs);
    }

    @Test
    public void theSystemReadsTheManifestAsMeant() throws Exception {
        PackageManager packages = phone.app.getPackageManager();
        for (String cause : new String[] {Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_TIME_CHANGED, Intent.ACTION_TIMEZONE_CHANGED,
            Intent.ACTION_MY_PACKAGE_REPLACED, android.app.AlarmManager.ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED})
            assertEquals(cause, 1, packages.queryBroadcastReceivers(new Intent(cause).setPackage("org.firstdew"), 0).size());
        ServiceInfo service = packages.getServiceInfo(new android.content.ComponentName(phone.app, BathService.class), 0);
        assertEquals(ServiceInfo.FOREGROUND_SERVICE_TYPE_MEDIA_PLAYBACK, service.getForegroundServiceType());
        ProviderInfo provider = packages.resolveContentProvider("org.firstdew.share", 0);
        assertTrue(provider.grantUriPermissions);
        assertFalse(provider.exported);
        assertTrue(phone.app.getResources().getIdentifier("notice", "drawable", "org.firstdew") != 0);
    }
}
