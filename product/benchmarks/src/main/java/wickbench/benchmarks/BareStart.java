package wickbench.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.apache.felix.framework.Felix;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;

/**
 * The least a program of this build can be: Felix, the same third-party bundles, one bundle that opens a window and a database.
 *
 * <p>Arguments: the folder with the bundles, and a folder for what it writes.
 */
public final class BareStart {
    static final String READY = "bare window usable";

    private BareStart() {}

    public static void main(String[] arguments) throws Exception {
        Path work = Files.createDirectories(Path.of(arguments[1]));
        Path cache = Files.createTempDirectory(work, "cache");
        Felix felix = new Felix(Map.of(Constants.FRAMEWORK_STORAGE, cache.toString()));
        felix.init();
        List<Bundle> bundles = new ArrayList<>();
        for (Path jar : jars(Path.of(arguments[0]))) {
            bundles.add(felix.getBundleContext().installBundle("reference:" + jar.toUri()));
        }
        bundles.add(felix.getBundleContext()
                .installBundle("reference:" + windowBundle(work).toUri()));
        felix.start();
        for (Bundle bundle : bundles) {
            if (bundle.getHeaders().get(Constants.FRAGMENT_HOST) == null) {
                bundle.start();
            }
        }
        window(felix.getBundleContext()).run();
        felix.stop();
        felix.waitForStop(0);
    }

    private static Runnable window(BundleContext context) {
        ServiceReference<Runnable> found = context.getServiceReference(Runnable.class);
        return context.getService(found);
    }

    /** Third-party bundles that resolve alone: the component runtime, the toolkit of this machine, the database, and their like. */
    private static List<Path> jars(Path repo) throws IOException {
        try (Stream<Path> all = Files.walk(repo)) {
            return all.filter(file -> file.toString().endsWith(".jar"))
                    .filter(file -> !file.toString().contains("/wickbench.") && suits(file.toString()))
                    .sorted()
                    .toList();
        }
    }

    /** Of the toolkit's fragments, the one for this machine. */
    private static boolean suits(String jar) {
        String arch = System.getProperty("os.arch").equals("aarch64") ? "aarch64" : "x86_64";
        return !jar.matches(".*\\.swt\\.(gtk|win32|cocoa)\\..*") || jar.contains("gtk.linux." + arch);
    }

    /** Packs the window's class into a bundle of its own. */
    private static Path windowBundle(Path work) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue(Constants.BUNDLE_MANIFESTVERSION, "2");
        main.putValue(Constants.BUNDLE_SYMBOLICNAME, "bare.window");
        main.putValue(Constants.BUNDLE_ACTIVATOR, BareWindow.class.getName());
        main.putValue(
                Constants.IMPORT_PACKAGE,
                "org.osgi.framework,org.h2,javax.sql,org.eclipse.swt,org.eclipse.swt.widgets,org.eclipse.swt.layout");
        Path jar = Files.createTempFile(work, "window", ".jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream packed = new JarOutputStream(out, manifest)) {
            String name = BareWindow.class.getName().replace('.', '/') + ".class";
            packed.putNextEntry(new JarEntry(name));
            packed.write(BareStart.class.getResourceAsStream("/" + name).readAllBytes());
        }
        return jar;
    }
}
