package org.firstdew;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertNotNull;
import static org.junit.Assert.assertThrows;
import static org.junit.Assert.assertTrue;

import groovy.lang.Binding;
import groovy.lang.Closure;
import groovy.lang.GroovyObjectSupport;
import groovy.lang.GroovyShell;
import groovy.lang.Script;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.Paths;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.codehaus.groovy.control.CompilerConfiguration;
import org.junit.Test;

/**
 * The recipe for Gradle, run by Gradle's own language with somebody in Gradle's place who writes down what is set: it has
 * to be well formed, to use no name but those that Qt hands it, and to agree with the manifest. Nothing is packed by it here.
 */
public final class RecipeTest {
    /** What Qt's packaging writes into gradle.properties (Qt for Android, "Gradle"). */
    private static final Map<String, String> FROM_QT = Map.of("androidCompileSdkVersion", "android-36", "androidBuildToolsVersion", "36.0.0",
        "androidNdkVersion", "27.2.12479018", "qtAndroidDir", "/qt/java", "qtMinSdkVersion", "28", "qtTargetSdkVersion", "36", "qtTargetAbiList", "arm64-v8a");

    /** What the packaging's merging of all manifests comes to. */
    private static String merged = "<manifest/>";

    /** Takes every block, call and setting, and remembers it by its path. */
    public static final class Recorder extends GroovyObjectSupport {
        private final String path;
        private final Map<String, List<Object>> seen;

        Recorder(String path, Map<String, List<Object>> seen) {
            this.path = path;
            this.seen = seen;
        }

        private String under(String name) {
            return path.isEmpty() ? name : path + "." + name;
        }

        private void note(String name, Object value) {
            seen.computeIfAbsent(under(name), any -> new ArrayList<>()).add(value);
        }

        @Override
        public Object getProperty(String name) {
            if ("text".equals(name))
                return merged;
            return FROM_QT.containsKey(name) ? FROM_QT.get(name) : new Recorder(under(name), seen);
        }

        @Override
        public void setProperty(String name, Object value) {
            note(name, value);
        }

        @Override
        public Object invokeMethod(String name, Object arguments) {
            Recorder inside = new Recorder(under(name), seen);
            for (Object a : (Object[]) arguments)
                if (a instanceof Closure) {
                    Closure<?> block = (Closure<?>) a;
                    block.setDelegate(inside);
                    block.setResolveStrategy(Closure.DELEGATE_FIRST);
                    if (block.getMaximumNumberOfParameters() == 1)
                        block.call(inside);
                    else
                        block.call();
                } else {
                    note(name, a);
                }
            return inside;
        }
    }

    /** A recipe whose outermost block is Gradle's project. */
    public abstract static class Project extends Script {
        @Override
        public Object getProperty(String name) {
            return ((Recorder) getBinding().getVariable("project")).getProperty(name);
        }

        @Override
        public Object invokeMethod(String name, Object arguments) {
            return ((Recorder) getBinding().getVariable("project")).invokeMethod(name, arguments);
        }
    }

    private static Map<String, List<Object>> run(String file) throws Exception {
        Map<String, List<Object>> seen = new TreeMap<>();
        Binding binding = new Binding();
        binding.setVariable("project", new Recorder("", seen));
        CompilerConfiguration language = new CompilerConfiguration();
        language.setScriptBaseClass(Project.class.getName());
        // Gradle brings its own names into view.
        String text = new String(Files.readAllBytes(new File(System.getProperty("recipe"), file).toPath()),
            StandardCharsets.UTF_8).replace("GradleException", "RuntimeException");
        Script recipe = new GroovyShell(RecipeTest.class.getClassLoader(), binding, language).parse(text, file);
        recipe.run();
        return seen;
    }

    @Test
    public void theRecipeSaysWhatTheManifestSays() throws Exception {
        Map<String, List<Object>> seen = run("build.gradle");
        String manifest = new String(Files.readAllBytes(new File(System.getProperty("manifest")).toPath()),
            StandardCharsets.UTF_8);
        for (String said : new String[] {"android.namespace", "android.defaultConfig.applicationId"})
            assertTrue(said, manifest.contains("package=\"" + seen.get(said).get(0) + "\""));
        assertTrue(manifest.contains("minSdkVersion=\"" + seen.get("android.defaultConfig.minSdkVersion").get(0) + "\""));
        assertTrue(manifest.contains("targetSdkVersion=\"" + seen.get("android.defaultConfig.targetSdkVersion").get(0) + "\""));
        assertEquals(List.of("AndroidManifest.xml"), seen.get("android.sourceSets.main.manifest.srcFile"));
        // Qt's Java and ours.
        assertEquals(List.of("/qt/java/src", "src"), seen.get("android.sourceSets.main.java.srcDirs").get(0));
        assertTrue(new File(System.getProperty("recipe"), "src/org/firstdew/Bridge.java").isFile());
        assertEquals(Map.of("plugin", "com.android.application"), seen.get("apply").get(0));
        assertNotNull(run("settings.gradle").toString());
    }

    /** The versions that ANDROID.md says belong together, and what CMake tells Qt. */
    @Test
    public void whatIsWrittenAboutVersionsAgrees() throws Exception {
        Path parts = Paths.get(System.getProperty("recipe"));
        String manifest = Files.readString(parts.resolve("AndroidManifest.xml"));
        String least = between(manifest, "minSdkVersion=\"", "\"");
        String target = between(manifest, "targetSdkVersion=\"", "\"");
        assertEquals(FROM_QT.get("qtMinSdkVersion"), least);
        assertEquals(FROM_QT.get("qtTargetSdkVersion"), target);
        String plugin = ((String) run("build.gradle").get("buildscript.dependencies.classpath").get(0)).replaceFirst(".*:", "");
        String about = Files.readString(parts.resolveSibling("ANDROID.md"));
        for (String said : new String[] {"| Android | " + least + " to " + target + " |", ", " + plugin + " |", ", " + FROM_QT.get("androidNdkVersion") + " |",
            "| " + FROM_QT.get("androidCompileSdkVersion") + ", " + FROM_QT.get("androidBuildToolsVersion") + " |"})
            assertTrue(said, about.contains(said));
        String app = Files.readString(parts.resolve("../../app/CMakeLists.txt"));
        assertTrue(app.contains("QT_ANDROID_MIN_SDK_VERSION " + least + " QT_ANDROID_TARGET_SDK_VERSION " + target + ")"));
    }

    private static String between(String text, String before, String after) {
        int from = text.indexOf(before) + before.length();
        return text.substring(from, text.indexOf(after, from));
    }

    @Test
    public void aMergedManifestThatAsksForTheNetworkStopsThePackaging() throws Exception {
        merged = "<uses-permission android:name=\"android.permission.INTERNET\"/>";
        try {
            assertThrows(RuntimeException.class, () -> run("build.gradle"));
        } finally {
            merged = "<manifest/>";
        }
    }

    /** Android lacks what makes a lambda's class, so the app would end where the first one is used. The compiler itself
     * refuses later methods of Java's own classes. */
    @Test
    public void nothingCompiledNeedsRewritingForAndroid() throws Exception {
        File[] classes = new File(System.getProperty("compiled"), "org/firstdew").listFiles((in, name) -> name.endsWith(".class"));
        assertTrue(String.valueOf(classes.length), classes.length >= 25);
        for (File file : classes) {
            byte[] bytes = Files.readAllBytes(file.toPath());
            assertEquals(file.getName() + ": the form of Java 8", 52, bytes[7]);
            String text = new String(bytes, StandardCharsets.ISO_8859_1);
            assertTrue(file.getName(), !text.contains("java/lang/invoke/"));
        }
    }
}
