package wickbench.parts.plan;

import java.util.List;

/**
 * What a set says of itself.
 *
 * @param title what people call it
 * @param description in one sentence; may be empty
 * @param everywhere whether none of the bundles is for one system only
 * @param requires the sets it stands on, each in just this version
 */
public record SetPlan(
        SetId id, String title, String description, List<BundleId> bundles, boolean everywhere, List<SetId> requires) {
    public SetPlan {
        bundles = List.copyOf(bundles);
        requires = List.copyOf(requires);
    }

    /** Tells whether it holds nothing but words in other languages, which come with a classifier and run in bundles of other sets. */
    public boolean isLanguage() {
        return !bundles.isEmpty()
                && bundles.stream().allMatch(bundle -> bundle.classifier().isPresent());
    }

    public String name() {
        return id.name();
    }
}
