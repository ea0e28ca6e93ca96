package wickbench.plant.allergen;

import java.util.Locale;
import java.util.Set;

/**
 * One allergen.
 *
 * @param code the site's files and entries name it so, for example {@code brazil-nut}
 * @param group a wider name that lists use for several, for example {@code tree-nuts}; empty where there is none
 * @param targets what a strip's target may be called that answers it, in lower case
 * @param lists in which it is declared
 */
public record Allergen(String code, String group, Set<String> targets, Set<AllergenList> lists) {
    public Allergen {
        targets = Set.copyOf(targets);
        lists = Set.copyOf(lists);
    }

    /** Tells whether a strip for a target answers it; what of it the strip does not see is another question. */
    public boolean answers(String target) {
        return targets.contains(target.strip().toLowerCase(Locale.ROOT));
    }
}
