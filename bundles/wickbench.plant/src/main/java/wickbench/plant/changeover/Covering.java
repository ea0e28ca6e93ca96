package wickbench.plant.changeover;

import java.util.List;
import java.util.Locale;
import wickbench.api.method.Method;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.product.Contained;

/** Tells which issued methods answer an allergen, and which of those see the part of it that is there. */
final class Covering {
    private final List<Method> methods;

    Covering(List<Method> methods) {
        this.methods = methods;
    }

    List<Way> ways(Contained held) {
        return methods.stream()
                .filter(method -> answers(method, held.allergen()))
                .map(method -> new Way(
                        method.ref(),
                        method.route(),
                        method.target().name(),
                        sees(method, held),
                        method.target().notSeen()))
                .toList();
    }

    /** Whether a strip for this target says anything of an allergen. */
    static boolean answers(Method method, String allergen) {
        return Allergens.find(allergen)
                .filter(known -> known.answers(method.target().name()))
                .isPresent();
    }

    /** A part that is not said may be any, so only a caution follows; one that is said must not be among what is not seen. */
    private static boolean sees(Method method, Contained held) {
        return held.part()
                .filter(part -> method.target().notSeen().stream().anyMatch(blind -> same(blind, part)))
                .isEmpty();
    }

    /** Whey protein is whey proteins, and whey powder's whey too: the shorter of two names stands in the longer. */
    private static boolean same(String one, String other) {
        String left = plain(one);
        String right = plain(other);
        return left.contains(right) || right.contains(left);
    }

    private static String plain(String words) {
        String small = words.strip().toLowerCase(Locale.ROOT);
        return small.endsWith("s") ? small.substring(0, small.length() - 1) : small;
    }
}
