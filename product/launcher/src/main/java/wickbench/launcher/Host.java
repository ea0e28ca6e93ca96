package wickbench.launcher;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.ToIntFunction;
import org.apache.felix.framework.Felix;
import org.apache.felix.framework.util.FelixConstants;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;

/** A running framework with the bundles of an install set, all resolved and started. */
public final class Host implements AutoCloseable {

    private static final String APPLICATION = "(wickbench.application=main)";
    private static final long STOP_MILLIS = 10_000;

    private final CacheFolder cache;
    private final Framework framework;
    private final AtomicBoolean closed = new AtomicBoolean();

    private Host(CacheFolder cache, Map<String, String> told) {
        this.cache = cache;
        this.framework = new Felix(configuration(cache.folder(), told));
    }

    /**
     * Starts the named features of the product with a cache below {@code caches}.
     *
     * @throws CannotStart with the reasons; then nothing is left running
     */
    public static Host start(Product product, List<String> features, Path caches, Phases phases)
            throws CannotStart, IOException {
        List<Path> jars = InstallSet.of(product, features, Platform.here());
        phases.reached("features read");
        var host = new Host(cache(caches), Installed.told(product, features));
        try {
            host.startAll(product, jars, phases);
            return host;
        } catch (BundleException broken) {
            host.close();
            throw new CannotStart("the framework does not start: " + broken.getMessage());
        } catch (CannotStart | RuntimeException reasons) {
            host.close();
            throw reasons;
        }
    }

    /** All bundles, the framework's own first. */
    public Bundle[] bundles() {
        return framework.getBundleContext().getBundles();
    }

    /** The framework's own view, for those who ask its services. */
    public BundleContext context() {
        return framework.getBundleContext();
    }

    /** The one application of the install set. */
    @SuppressWarnings("unchecked") // the service is registered under the class, the filter vouches for its argument
    public ToIntFunction<String[]> application() throws CannotStart {
        var found = applications();
        if (found.size() != 1) {
            throw new CannotStart("the installed features offer " + found.size() + " applications, one is needed");
        }
        Object application = framework.getBundleContext().getService(found.get(0));
        if (application == null) {
            throw new CannotStart(
                    "the application of " + found.get(0).getBundle().getSymbolicName() + " does not start");
        }
        return (ToIntFunction<String[]>) application;
    }

    /** Stops the framework, waits for it, and removes its cache. */
    @Override
    public void close() throws IOException {
        if (closed.compareAndSet(false, true)) {
            try {
                framework.stop();
                framework.waitForStop(STOP_MILLIS);
            } catch (BundleException broken) {
                throw new IOException(broken);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            } finally {
                cache.close();
            }
        }
    }

    /** As {@link #close()}, for a process that is ending: a failure is told, nothing more can be done. */
    void closeQuietly() {
        try {
            close();
        } catch (IOException failed) {
            System.err.println("wickbench: the program did not stop cleanly: " + failed.getMessage());
        }
    }

    private static CacheFolder cache(Path caches) throws CannotStart {
        try {
            return CacheFolder.below(caches);
        } catch (IOException refused) {
            throw new CannotStart("the framework finds no place for its state below " + caches + ": " + refused);
        }
    }

    private void startAll(Product product, List<Path> jars, Phases phases) throws BundleException, CannotStart {
        framework.init();
        BundleLog.register(framework.getBundleContext());
        Installed.register(product, framework.getBundleContext());
        phases.reached("framework initialised");
        var installed = new ArrayList<Bundle>();
        for (Path jar : jars) {
            installed.add(framework.getBundleContext().installBundle("reference:" + jar.toUri()));
        }
        phases.reached(installed.size() + " bundles installed");
        framework.adapt(FrameworkWiring.class).resolveBundles(installed);
        phases.reached("bundles resolved");
        framework.start();
        startEach(installed);
        phases.reached("bundles started");
    }

    private static void startEach(List<Bundle> bundles) throws CannotStart {
        var reasons = new ArrayList<String>();
        for (Bundle bundle : bundles) {
            try {
                if (!isFragment(bundle)) {
                    bundle.start();
                } else if (bundle.getState() != Bundle.RESOLVED) {
                    reasons.add("fragment " + bundle.getSymbolicName() + " found no bundle to attach to");
                }
            } catch (BundleException broken) {
                reasons.add(Reason.of(bundle.getSymbolicName(), broken));
            }
        }
        if (!reasons.isEmpty()) {
            throw new CannotStart(reasons);
        }
    }

    private static boolean isFragment(Bundle bundle) {
        return (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
    }

    private List<ServiceReference<?>> applications() {
        try {
            var found =
                    framework.getBundleContext().getAllServiceReferences(ToIntFunction.class.getName(), APPLICATION);
            return found == null ? List.of() : List.of(found);
        } catch (InvalidSyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Map<String, Object> configuration(Path cache, Map<String, String> told) {
        var values = new HashMap<String, Object>(told);
        values.put(Constants.FRAMEWORK_STORAGE, cache.resolve("bundles").toString());
        values.put(FelixConstants.LOG_LOGGER_PROP, new FrameworkLog());
        values.put(Constants.FRAMEWORK_SYSTEMPACKAGES_EXTRA, BundleLog.PACKAGE + "," + Installed.PACKAGE);
        return values;
    }
}
