package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import wickbench.api.person.PersonId;

class GlobalOptionsTest {

    @Test
    void stand_before_or_after_the_command() {
        GlobalOptions options =
                GlobalOptions.of("--home", "/plant", "judge", "--sheet", "a.csv", "--json", "--as", "rivera");

        assertThat(options.home()).isEqualTo(Path.of("/plant"));
        assertThat(options.json()).isTrue();
        assertThat(options.actor()).contains(new PersonId("rivera"));
        assertThat(options.rest()).containsExactly("judge", "--sheet", "a.csv");
    }

    @Test
    void leave_every_other_argument_to_the_command() {
        assertThat(GlobalOptions.of("ledger", "list", "--from", "2026-01-01", "-h")
                        .rest())
                .containsExactly("ledger", "list", "--from", "2026-01-01", "-h");
    }

    @Test
    void take_help_for_the_option_of_that_name() {
        assertThat(GlobalOptions.of("help").rest()).containsExactly("--help");
        assertThat(GlobalOptions.of("help", "plant", "order").rest()).containsExactly("plant", "order", "--help");
    }

    @Test
    void name_the_account_when_nobody_is_named() {
        assertThat(GlobalOptions.of("judge").actor()).isEqualTo(SystemAccount.person(System.getProperty("user.name")));
    }

    @Test
    void refuse_an_actor_that_cannot_be_one() {
        assertThatThrownBy(() -> GlobalOptions.of("--as", "Anna Smith"))
                .isInstanceOf(CommandLine.ParameterException.class)
                .hasMessageContaining("person id");
    }
}
