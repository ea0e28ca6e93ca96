package wickbench.launcher;

import java.util.List;
import java.util.Map;
import org.osgi.framework.BundleContext;
import org.osgi.service.feature.FeatureService;

/**
 * What bundles may know of how they were installed: the product folder, the features that were asked for, and the reader of features.
 *
 * <p>Whoever installs more while the program runs reads features by the same reader as the launcher.
 */
final class Installed {

    /** What the framework has to offer to bundles, so that they and the launcher mean the same reader. */
    static final String PACKAGE = "org.osgi.service.feature;version=1.0.0";

    private static final String FOLDER = "wickbench.product";

    private Installed() {}

    /** The framework properties that say so. */
    static Map<String, String> told(Product product, List<String> features) {
        return Map.of(FOLDER, product.folder().toString(), CommandLine.PROPERTY, String.join(",", features));
    }

    static void register(Product product, BundleContext context) {
        context.registerService(FeatureService.class, product.reader(), null);
    }
}
