package wickbench.stock.room;

import java.util.Optional;
import wickbench.api.profile.Profile;
import wickbench.stock.Kit;

/**
 * Which lots may be used without their check: those of a kit whose definition lets somebody waive it, and those of a kit for which the
 * site's profile waives it. Either way the waiver is an entry.
 *
 * @param profile the one in force then
 */
record Waiving(Optional<Profile> profile) {
    static final Waiving NONE = new Waiving(Optional.empty());

    /** The reason that stands in the entry of a waiver which nobody had to ask for; the same in every language. */
    static final String BY_PROFILE = "site-profile";

    /** Tells whether somebody may waive the check. */
    boolean allows(Kit kit) {
        return kit.check().waivable() || named(kit.name());
    }

    /** Tells whether a delivery is fit as it comes. Where a waiver is to be signed, the lot waits until somebody signs it. */
    boolean atOnce(String kit) {
        return named(kit)
                && profile.filter(held -> held.requiredSignatures().contains(LotEventJson.WAIVED))
                        .isEmpty();
    }

    private boolean named(String kit) {
        return profile.filter(held -> held.waivedLotChecks().contains(kit)).isPresent();
    }
}
