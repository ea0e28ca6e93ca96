package wickbench.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CommandLineTest {

    @Test
    void everything_is_started_when_nothing_is_said() {
        CommandLine line = CommandLine.parse(new String[] {"judge", "--features", "x"}, null);
        assertThat(line.features()).containsExactly("complete");
        assertThat(line.rest()).containsExactly("judge", "--features", "x");
    }

    @Test
    void the_first_argument_wins_over_the_property() {
        CommandLine line = CommandLine.parse(new String[] {"--features", "base, bench", "judge"}, "ledger");
        assertThat(line.features()).containsExactly("base", "bench");
        assertThat(line.rest()).containsExactly("judge");
    }

    @Test
    void the_property_names_features_too() {
        assertThat(CommandLine.parse(new String[0], "base,ledger").features()).containsExactly("base", "ledger");
    }

    @Test
    void an_option_without_names_names_nothing() {
        assertThat(CommandLine.parse(new String[] {"--features"}, "ledger").features())
                .isEmpty();
    }
}
