package wickbench.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureArtifact;
import org.osgi.service.feature.FeatureExtension.Kind;
import org.osgi.service.feature.ID;

/**
 * The bundles of some features and of all that those require: what is required comes first, no bundle comes twice.
 *
 * <p>A feature requires others by the mandatory extension {@value #REQUIRES}, a list of feature ids. An id with a classifier is a
 * fragment of the bundle with the same id without one, and comes only where that bundle does: so one list of a language's fragments
 * suits every choice of features.
 */
public final class InstallSet {

    static final String REQUIRES = "wickbench-requires";

    private final Product product;
    private final Platform platform;
    private final Set<String> visited = new LinkedHashSet<>();
    private final Map<ID, Path> jars = new LinkedHashMap<>();

    private InstallSet(Product product, Platform platform) {
        this.product = product;
        this.platform = platform;
    }

    /** The jars of these features in the order in which they are to be installed; each is there. */
    public static List<Path> of(Product product, List<String> features, Platform platform) throws CannotStart {
        var set = read(product, features, platform);
        set.checkPresent();
        return List.copyOf(set.jars.values());
    }

    /** The names of these features and of all that they require. */
    public static List<String> names(Product product, List<String> features) throws CannotStart {
        return List.copyOf(read(product, features, Platform.here()).visited);
    }

    private static InstallSet read(Product product, List<String> features, Platform platform) throws CannotStart {
        if (features.isEmpty()) {
            throw new CannotStart("no feature is named; --features takes names with commas between them");
        }
        var set = new InstallSet(product, platform);
        for (String name : features) {
            set.add(name);
        }
        set.dropFragmentsWithoutHost();
        return set;
    }

    private void add(String name) throws CannotStart {
        if (visited.add(name)) {
            Feature feature = product.feature(name);
            checkExtensions(feature);
            addRequired(feature);
            feature.getBundles().stream()
                    .filter(bundle -> platform.suits(bundle.getMetadata()))
                    .forEach(bundle -> jars.put(bundle.getID(), product.jar(bundle.getID())));
        }
    }

    private void addRequired(Feature feature) throws CannotStart {
        var requires = feature.getExtensions().get(REQUIRES);
        if (requires != null) {
            for (FeatureArtifact required : requires.getArtifacts()) {
                add(required.getID().getArtifactId());
                checkVersion(feature, required.getID());
            }
        }
    }

    private void checkVersion(Feature asking, ID wanted) throws CannotStart {
        ID found = product.feature(wanted.getArtifactId()).getID();
        if (!found.equals(wanted)) {
            throw new CannotStart(asking.getID() + " requires " + wanted + ", but the product holds " + found);
        }
    }

    /** A mandatory extension that is not understood forbids the feature, as the Feature Service specification asks. */
    private static void checkExtensions(Feature feature) throws CannotStart {
        for (var extension : feature.getExtensions().values()) {
            if (extension.getKind() == Kind.MANDATORY && !extension.getName().equals(REQUIRES)) {
                throw new CannotStart(feature.getID() + " asks for \"" + extension.getName()
                        + "\", which this launcher does not know");
            }
        }
    }

    private void dropFragmentsWithoutHost() {
        Set<String> hosts = jars.keySet().stream()
                .filter(id -> id.getClassifier().isEmpty())
                .map(InstallSet::host)
                .collect(Collectors.toSet());
        jars.keySet().removeIf(id -> !hosts.contains(host(id)));
    }

    private static String host(ID id) {
        return id.getGroupId() + ":" + id.getArtifactId() + ":" + id.getVersion();
    }

    private void checkPresent() throws CannotStart {
        var missing = new ArrayList<String>();
        jars.forEach((id, jar) -> {
            if (!Files.isRegularFile(jar)) {
                missing.add("bundle " + id + " is missing: " + jar);
            }
        });
        if (!missing.isEmpty()) {
            throw new CannotStart(missing);
        }
    }
}
