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
            "base",
                    Set.of(
                            "attach", "feature", "index", "journal", "people", "picture", "profile", "report", "sign",
                            "station"),
            "bench", Set.of("bench", "demo", "judge", "method", "plan", "record"),
            "figures", Set.of("figures"),
            "ledger", Set.of("ledger"),
            "plant", Set.of("plant"),
            "stock", Set.of("fridge", "stock"),
            "training", Set.of("round", "training"));

    @TempDir
    Path temporary;

    static Stream<List<String>> every() {
        return InstallSets.all();
    }

    static Stream<List<String>> single() {
        return InstallSets.all().filter(set -> set.size() <= 2 || set.size() > InstallSets.OPTIONAL.size());
    }

    @ParameterizedTest
    @MethodSource("every")
    void every_bundle_runs_and_no_component_lacks_anything(List<String> set) throws Exception {
        try (var started = StartedSet.of(set, temporary)) {
            assertThat(started.notRunning()).isEmpty();
            started.nameHome(temporary.resolve("home"));
            assertThat(started.commands()).isEqualTo(commands(set));
            Components components = started.components();
            assertThat(components.count()).isPositive();
            assertThat(components.unsatisfied(MAY_LACK.keySet())).isEmpty();
        }
    }

    /** The base, each feature alone with it, and all together, as programs of their own. */
    @ParameterizedTest
    @MethodSource("single")
    void help_lists_exactly_the_commands_of_the_set(List<String> set) throws Exception {
        Answer help = new Program(temporary).call("--features", String.join(",", set), "--help");
        assertThat(help.code()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.commands()).isEqualTo(commands(set));
    }

    private static Set<String> commands(List<String> set) {
        var expected = new HashSet<String>();
        set.forEach(feature -> expected.addAll(COMMANDS.get(feature)));
        return expected;
    }
}
