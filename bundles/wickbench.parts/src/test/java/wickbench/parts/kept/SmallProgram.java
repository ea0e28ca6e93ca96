package wickbench.parts.kept;

import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import org.apache.felix.framework.Felix;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.service.feature.FeatureService;
import org.osgi.service.log.Logger;
import wickbench.api.home.HomeFolder;
import wickbench.parts.SmallProduct;

/** A real framework with the base of a small product, and the sets of a home in it. */
final class SmallProgram implements AutoCloseable {
    private static final long PATIENCE_MILLIS = 10_000;

    private final Felix framework;
    private final List<String> warnings = new ArrayList<>();
    private final KeptSets sets;

    /** Starts the product's features of these names, as the launcher would, for a home. */
    SmallProgram(SmallProduct product, Path home, Path cache, String... features) throws BundleException, IOException {
        framework = new Felix(Map.of(
                "org.osgi.framework.storage", cache.toString(),
                "felix.log.level", "0",
                "wickbench.product", product.folder().toString(),
                "wickbench.features", String.join(",", features)));
        framework.start();
        for (String feature : features) {
            Path repo = product.folder().resolve("repo/test");
            try (Stream<Path> jars = java.nio.file.Files.walk(repo)) {
                String json = java.nio.file.Files.readString(product.folder().resolve("features/" + feature + ".json"));
                for (Path jar : jars.filter(file -> file.toString().endsWith(".jar"))
                        .sorted()
                        .toList()) {
                    String bundle = repo.relativize(jar).getName(0).toString();
                    if (json.contains(":" + bundle + ":")) {
                        framework
                                .getBundleContext()
                                .installBundle("reference:" + jar.toUri())
                                .start();
                    }
                }
            }
        }
        sets = new KeptSets(
                framework.getBundleContext(),
                new HomeFolder(home),
                ServiceLoader.load(FeatureService.class).findFirst().orElseThrow(),
                (Logger) Proxy.newProxyInstance(
                        Logger.class.getClassLoader(), new Class<?>[] {Logger.class}, (self, method, arguments) -> {
                            warnings.add(String.valueOf(arguments[0]));
                            return null;
                        }));
    }

    KeptSets sets() {
        return sets;
    }

    List<String> warnings() {
        return warnings;
    }

    /** Returns name and version of all bundles that run, the framework's own left out. */
    List<String> bundles() {
        return Stream.of(framework.getBundleContext().getBundles())
                .skip(1)
                .filter(bundle -> bundle.getState() == Bundle.ACTIVE)
                .map(bundle ->
                        bundle.getSymbolicName() + " " + bundle.getLocation().replaceFirst(".*/", ""))
                .sorted()
                .toList();
    }

    /** Returns how many bundles there are in whatever state. */
    int count() {
        return framework.getBundleContext().getBundles().length;
    }

    @Override
    public void close() throws BundleException {
        framework.stop();
        try {
            framework.waitForStop(PATIENCE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
