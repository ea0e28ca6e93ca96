package wickbench.parts.running;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import wickbench.parts.plan.BundleId;
import wickbench.parts.plan.SetId;
import wickbench.parts.plan.SetPlan;
import wickbench.parts.words.PartsWords;

/**
 * A set ready to be packed.
 *
 * @param feature what it says of itself, as it stands in its file
 * @param jars its bundles by file name
 */
public record Packed(SetId id, byte[] feature, Map<String, byte[]> jars) {

    /** Reads the jars; refuses what can be in no archive. */
    static Packed of(SetPlan plan, byte[] feature, Function<BundleId, Path> jar) {
        if (!plan.everywhere()) {
            throw PartsWords.refusal("part.one-system", plan.name());
        }
        if (plan.bundles().isEmpty()) {
            throw PartsWords.refusal("part.empty", plan.name());
        }
        Map<String, byte[]> jars = new TreeMap<>();
        for (BundleId bundle : plan.bundles()) {
            jars.put(bundle.file(), ProductSets.bytes(jar.apply(bundle)));
        }
        return new Packed(plan.id(), feature, jars);
    }
}
