package wickbench.tests;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every way to install the product: the base with each choice of the optional features. */
final class InstallSets {

    /** Languages bring words and nothing that runs; each comes with any choice of the others. */
    static final List<String> LANGUAGES = List.of("spanish");

    /** A new optional feature is added here. */
    static final List<String> OPTIONAL = List.of("bench", "figures", "ledger", "plant", "stock", "training");

    private InstallSets() {}

    /** {@code [base]}, {@code [base, bench]}, {@code [base, ledger]}, … */
    static Stream<List<String>> all() {
        Stream<List<String>> sets = Stream.of(List.of("base"));
        for (String optional : OPTIONAL) {
            sets = sets.flatMap(set -> Stream.of(set, with(set, optional)));
        }
        return sets;
    }

    private static List<String> with(List<String> set, String more) {
        var longer = new ArrayList<>(set);
        longer.add(more);
        return List.copyOf(longer);
    }
}
