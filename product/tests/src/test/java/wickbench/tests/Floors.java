package wickbench.tests;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The floors of the house: which bundle may look at which.
 *
 * <p>Ground: ports, proofs, reading core, statistics, the faint-line drill. Above it the headless bundles, none of which looks at another. Then the desk, then the
 * pages. Arrows point down only.
 */
final class Floors {

    private static final String PAGES = ".ui";
    private static final Set<String> GROUND =
            Set.of("wickbench.api", "wickbench.proof", "wickbench.reading", "wickbench.figures", "wickbench.drill");
    private static final Set<String> DESK = Set.of("wickbench.shell", "wickbench.widgets");
    private static final Set<String> PAGE = Set.of(
            "wickbench.api",
            "wickbench.reading",
            "wickbench.figures",
            "wickbench.drill",
            "wickbench.shell",
            "wickbench.widgets");

    /** The ground and the desk by name; every other bundle is a page if its name ends in {@code .ui}, else headless. */
    private static final Map<String, Set<String>> DRAWN = Map.of(
            "wickbench.api", Set.of(),
            "wickbench.proof", Set.of(),
            "wickbench.reading", Set.of("wickbench.api"),
            "wickbench.figures", Set.of("wickbench.api"),
            "wickbench.drill", Set.of("wickbench.api", "wickbench.figures"),
            "wickbench.widgets", Set.of("wickbench.api", "wickbench.reading"),
            "wickbench.shell", Set.of("wickbench.api", "wickbench.widgets"));

    private Floors() {}

    /** The bundles of the house that this one may look at; a page also sees what the bundle that it is a page of exports. */
    static Set<String> below(String bundle) {
        return DRAWN.getOrDefault(bundle, bundle.endsWith(PAGES) ? page(bundle) : GROUND);
    }

    private static Set<String> page(String bundle) {
        String shown = bundle.substring(0, bundle.length() - PAGES.length());
        return Stream.concat(PAGE.stream(), Stream.of(shown)).collect(Collectors.toUnmodifiableSet());
    }

    /** Whether windows may be seen from this bundle. */
    static boolean seesWindows(String bundle) {
        return DESK.contains(bundle) || bundle.endsWith(PAGES);
    }

    /** The bundle that this package belongs to: folder, bundle and root package have one name. */
    static Optional<String> ownerOf(String packageName, List<String> bundles) {
        return bundles.stream()
                .filter(bundle -> (packageName + ".").startsWith(bundle + "."))
                .max(Comparator.comparingInt(String::length));
    }
}
