package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every way to install the product starts in a real framework, whole and alone. */
class EveryInstallSetTest {

    /** Services that may be missing, each with its reason. */
    private static final Map<String, String> MAY_LACK = Map.of();

    /** The commands that each feature brings. */
    private static final Map<String, Set<String>> COMMANDS = Map.of(
            "base", Set.of("attach", "index", "journal", "people", "picture", "profile", "report", "sign", "station"),
            "bench", Set.of("bench", "demo", "judge", "method", "plan", "record"),
            "figures", Set.of("figures"),
            "ledger", Set.of("ledger"),
            "plant", Set.of("plant"),
            "stock", Set.of("fridge", "stock"),
            "training", Set.of("round", "training"));

    @TempDir
    Path temporary;

    static Stream<List<String>> sets() {
        return InstallSets.all();
    }

    @ParameterizedTest
    @MethodSource("sets")
    void every_bundle_runs(List<String> set) throws Exception {
        try (var started = StartedSet.of(set, temporary)) {
            assertThat(started.notRunning()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("sets")
    void no_component_lacks_anything_once_a_home_is_named(List<String> set) throws Exception {
        try (var started = StartedSet.of(set, temporary)) {
            started.nameHome(temporary.resolve("home"));
            Components components = started.components();
            assertThat(components.count()).isPositive();
            assertThat(components.unsatisfied(MAY_LACK.keySet())).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("sets")
    void help_lists_exactly_the_commands_of_the_set(List<String> set) throws Exception {
        var expected = new HashSet<String>();
        set.forEach(feature -> expected.addAll(COMMANDS.get(feature)));
        Answer help = new Program(temporary).call("--features", String.join(",", set), "--help");
        assertThat(help.code()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.commands()).isEqualTo(expected);
    }
}
