package wickbench.parts.running;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkEvent;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;
import wickbench.api.check.Refusal;
import wickbench.parts.plan.BundleId;
import wickbench.parts.plan.SetId;
import wickbench.parts.words.PartsWords;

/** Takes bundles into the framework and out of it; what does not come up whole leaves nothing behind. */
final class BundleWork {
    private static final long PATIENCE_SECONDS = 20;

    private final BundleContext context;
    private final FrameworkWiring wiring;

    BundleWork(BundleContext context) {
        this.context = context;
        wiring = context.getBundle(0).adapt(FrameworkWiring.class);
    }

    /** Returns the bundles of a set that are there. */
    List<Bundle> present(SetSource source) {
        return source.plan().bundles().stream()
                .map(bundle -> context.getBundle(source.location(bundle)))
                .filter(bundle -> bundle != null)
                .toList();
    }

    /** Installs and resolves them; nothing of theirs runs yet. */
    List<Bundle> install(SetSource source) {
        List<Bundle> installed = new ArrayList<>();
        try {
            for (BundleId bundle : source.plan().bundles()) {
                installed.add(install(source, bundle));
            }
            new Wants(wiring).unmet(installed).ifPresent(want -> {
                throw PartsWords.refusal("part.unresolved", source.plan().id(), want);
            });
            if (!wiring.resolveBundles(installed)) {
                throw PartsWords.refusal("part.unresolvable", source.plan().id());
            }
            return installed;
        } catch (RuntimeException refused) {
            remove(installed);
            throw refused;
        }
    }

    /** Starts them; when one does not start, all are gone again. */
    void start(SetSource source, List<Bundle> bundles) {
        for (Bundle bundle : bundles) {
            try {
                if (!isFragment(bundle)) {
                    bundle.start();
                }
            } catch (BundleException broken) {
                remove(bundles);
                Throwable cause = broken.getCause() == null ? broken : broken.getCause();
                throw PartsWords.refusal("part.start", source.plan().id(), bundle.getSymbolicName(), cause);
            }
        }
    }

    /** Stops and uninstalls them, the last first, and lets go of their classes. */
    void remove(List<Bundle> bundles) {
        for (int i = bundles.size() - 1; i >= 0; i--) {
            try {
                bundles.get(i).uninstall();
            } catch (BundleException | IllegalStateException gone) {
                // what fails while it stops is gone all the same; the framework goes on as the specification asks
                continue;
            }
        }
        refresh(bundles);
    }

    /** Returns a bundle outside that is wired to one of these, if there is one. */
    Optional<Bundle> leaning(List<Bundle> bundles) {
        Collection<Bundle> all = wiring.getDependencyClosure(bundles);
        return all.stream().filter(bundle -> !bundles.contains(bundle)).findFirst();
    }

    private Bundle install(SetSource source, BundleId id) {
        SetId set = source.plan().id();
        try (InputStream jar = source.jar(id).orElse(null)) {
            Bundle bundle = context.installBundle(source.location(id), jar);
            refusal(set, id, bundle).ifPresent(refused -> {
                remove(List.of(bundle));
                throw refused;
            });
            return bundle;
        } catch (BundleException broken) {
            throw broken.getType() == BundleException.DUPLICATE_BUNDLE_ERROR
                    ? PartsWords.refusal("part.bundle-there", set, id.artifact(), id.version())
                    : PartsWords.refusal("part.bundle-broken", set, id, firstLine(broken));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A bundle needs a name, and one that no other has: two of one name would share the work by chance. */
    private Optional<Refusal> refusal(SetId set, BundleId id, Bundle bundle) {
        String name = bundle.getSymbolicName();
        boolean modern = "2".equals(bundle.getHeaders("").get(Constants.BUNDLE_MANIFESTVERSION));
        if (name == null || name.isBlank() || !modern) {
            return Optional.of(PartsWords.refusal("part.bundle-broken", set, id, PartsWords.get("bundle.plain")));
        }
        return Stream.of(context.getBundles())
                .filter(other -> other != bundle && name.equals(other.getSymbolicName()))
                .map(twin -> PartsWords.refusal("part.bundle-there", set, twin.getSymbolicName(), twin.getVersion()))
                .findFirst();
    }

    private void refresh(List<Bundle> bundles) {
        CountDownLatch done = new CountDownLatch(1);
        wiring.refreshBundles(bundles, event -> {
            if (event.getType() == FrameworkEvent.PACKAGES_REFRESHED) {
                done.countDown();
            }
        });
        try {
            done.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static String firstLine(BundleException broken) {
        return String.valueOf(broken.getMessage()).lines().findFirst().orElse("");
    }

    private static boolean isFragment(Bundle bundle) {
        return (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
    }
}
