package wickbench.parts.plan;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.osgi.framework.Version;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureArtifact;
import org.osgi.service.feature.FeatureBundle;
import org.osgi.service.feature.FeatureExtension;
import org.osgi.service.feature.FeatureService;
import org.osgi.service.feature.ID;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.json.JsonReader;
import wickbench.parts.words.PartsWords;

/**
 * Reads a set's JSON after the OSGi Feature Service specification (Compendium 8, chapter 159).
 *
 * <p>The house's own reader looks first: it is bounded in depth and size and names the line. Then the launcher's reader says what it means.
 */
public final class SetReader {
    private static final String REQUIRES = "wickbench-requires";
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,31}");
    private static final int LONGEST = 256 << 10;

    private final FeatureService features;

    public SetReader(FeatureService features) {
        this.features = features;
    }

    /**
     * Reads one.
     *
     * @param source the name that complaints carry
     * @throws BadInput when it has another form
     */
    public SetPlan read(String source, byte[] json) {
        if (json.length > LONGEST) {
            throw new BadInput(Complaint.of(source, PartsWords.get("zip.large", json.length, LONGEST)));
        }
        JsonReader.read(source, json).orRefuse();
        Feature feature = feature(source, new String(json, StandardCharsets.UTF_8));
        SetId id = id(source, "id", feature.getID());
        checkExtensions(source, feature);
        List<BundleId> bundles =
                feature.getBundles().stream().map(SetReader::bundle).toList();
        checkOnce(source, bundles);
        return new SetPlan(
                id,
                feature.getName().orElse(id.name()),
                feature.getDescription().orElse(""),
                bundles,
                feature.getBundles().stream().map(FeatureBundle::getMetadata).noneMatch(SetReader::isForOneSystem),
                required(source, feature));
    }

    /** The reader says what it dislikes by whatever it stumbles over. */
    private Feature feature(String source, String json) {
        try {
            return features.readFeature(new StringReader(json));
        } catch (IOException | RuntimeException wrong) {
            String why = String.valueOf(wrong.getMessage()).lines().findFirst().orElse("");
            throw new BadInput(Complaint.of(source, PartsWords.get("feature.form", why)));
        }
    }

    private static SetId id(String source, String field, ID id) {
        if (!NAME.matcher(id.getArtifactId()).matches()) {
            throw new BadInput(Complaint.of(source, field, PartsWords.get("feature.name", id.getArtifactId())));
        }
        try {
            return new SetId(id.getArtifactId(), Version.parseVersion(id.getVersion()));
        } catch (IllegalArgumentException noVersion) {
            throw new BadInput(Complaint.of(source, field, PartsWords.get("feature.version", id.getVersion())));
        }
    }

    /** A mandatory extension that is not understood forbids the feature, as the specification asks. */
    private static void checkExtensions(String source, Feature feature) {
        for (FeatureExtension extension : feature.getExtensions().values()) {
            if (extension.getKind() == FeatureExtension.Kind.MANDATORY
                    && !extension.getName().equals(REQUIRES)) {
                throw new BadInput(Complaint.of(source, extension.getName(), PartsWords.get("feature.extension")));
            }
        }
    }

    private static BundleId bundle(FeatureBundle bundle) {
        ID id = bundle.getID();
        return new BundleId(id.getGroupId(), id.getArtifactId(), id.getClassifier(), id.getVersion());
    }

    private static boolean isForOneSystem(Map<String, Object> metadata) {
        return metadata.containsKey("os") || metadata.containsKey("arch");
    }

    private static void checkOnce(String source, List<BundleId> bundles) {
        Set<String> seen = new HashSet<>();
        for (BundleId bundle : bundles) {
            if (!seen.add(bundle.artifact() + bundle.classifier().orElse(""))) {
                throw new BadInput(Complaint.of(source, "bundles", PartsWords.get("feature.twice", bundle.artifact())));
            }
        }
    }

    private static List<SetId> required(String source, Feature feature) {
        FeatureExtension requires = feature.getExtensions().get(REQUIRES);
        if (requires == null) {
            return List.of();
        }
        if (requires.getType() != FeatureExtension.Type.ARTIFACTS) {
            throw new BadInput(Complaint.of(source, REQUIRES, PartsWords.get("feature.requires")));
        }
        return requires.getArtifacts().stream()
                .map(FeatureArtifact::getID)
                .map(id -> id(source, REQUIRES, id))
                .toList();
    }
}
