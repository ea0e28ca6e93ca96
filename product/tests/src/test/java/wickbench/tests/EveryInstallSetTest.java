package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.osgi.framework.Bundle;
import org.osgi.framework.wiring.BundleRevision;
import wickbench.launcher.Host;
import wickbench.launcher.Phases;
import wickbench.launcher.Product;

/** Every way to install the product starts in a real framework, whole and alone. */
class EveryInstallSetTest {

    /** Services that are not there before the command line has named a home; components that need them wait. */
    private static final Set<String> AWAITED = Set.of("wickbench.api.home.Home");

    /** The commands that each feature brings. */
    private static final Map<String, Set<String>> COMMANDS = Map.of(
            "base", Set.of(),
            "bench", Set.of(),
            "ledger", Set.of());

    @TempDir
    Path caches;

    static Stream<List<String>> sets() {
        return InstallSets.all();
    }

    @ParameterizedTest
    @MethodSource("sets")
    void every_bundle_runs_and_no_component_lacks_anything(List<String> set) throws Exception {
        try (Host host = start(set)) {
            assertThat(host.bundles()).allMatch(EveryInstallSetTest::runs, "runs");
            Components components = Components.in(host.context());
            assertThat(components.unsatisfied(AWAITED)).isEmpty();
        }
    }

    private Host start(List<String> set) throws Exception {
        return Host.start(Product.of(BuiltProduct.folder()), set, caches, Phases.silent());
    }

    private static boolean runs(Bundle bundle) {
        boolean fragment = (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
        return bundle.getState() == (fragment ? Bundle.RESOLVED : Bundle.ACTIVE);
    }
}
