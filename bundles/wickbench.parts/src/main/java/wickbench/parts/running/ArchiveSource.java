package wickbench.parts.running;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.archive.SetArchive;
import wickbench.parts.plan.BundleId;
import wickbench.parts.plan.SetPlan;
import wickbench.parts.plan.SetReader;
import wickbench.parts.words.PartsWords;

/**
 * A set out of a signed archive.
 *
 * <p>The framework gets the very bytes whose signature was checked, never a file that somebody may have changed since.
 */
public record ArchiveSource(SetArchive archive, SetPlan plan) implements SetSource {

    /**
     * Reads what the set says of itself.
     *
     * @throws BadInput when its bundles are not those in the archive
     */
    public static ArchiveSource of(SetArchive archive, SetReader reader) {
        SetPlan plan = reader.read(archive.featureSource(), archive.feature());
        Map<String, byte[]> jars = archive.bundles();
        TreeSet<String> unnamed = new TreeSet<>(jars.keySet());
        for (BundleId bundle : plan.bundles()) {
            if (!jars.containsKey(bundle.file())) {
                throw new BadInput(Complaint.of(
                        archive.featureSource(), "bundles", PartsWords.get("feature.bundle-missing", bundle)));
            }
            unnamed.remove(bundle.file());
        }
        if (!unnamed.isEmpty()) {
            throw new BadInput(Complaint.of(
                    archive.featureSource(), "bundles", PartsWords.get("feature.bundle-unnamed", unnamed.first())));
        }
        if (plan.bundles().isEmpty()) {
            throw new BadInput(Complaint.of(archive.featureSource(), "bundles", PartsWords.get("feature.empty")));
        }
        return new ArchiveSource(archive, plan);
    }

    @Override
    public String location(BundleId bundle) {
        return "part:" + archive.hash() + "/" + bundle.file();
    }

    @Override
    public Optional<InputStream> jar(BundleId bundle) {
        return Optional.of(new ByteArrayInputStream(archive.bundles().get(bundle.file())));
    }

    @Override
    public Optional<String> maker() {
        return Optional.of(archive.maker());
    }
}
