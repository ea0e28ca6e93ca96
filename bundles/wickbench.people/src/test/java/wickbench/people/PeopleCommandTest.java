package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.person.PersonId;
import wickbench.testing.HeardTerminal;

class PeopleCommandTest {
    @TempDir
    Path folder;

    private TestHouse house;

    @BeforeEach
    void open() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void anEmptyHouseSaysWhatToDoFirst() {
        assertThat(run(false, "list").get(0))
                .startsWith("Nobody is enrolled here yet. The first person adds themself:");
        assertThat(run(true, "list")).containsExactly("[]");
    }

    @Test
    void addedPeopleAreListedForPeopleAndForMachines() {
        run(false, "add", "p-01", "--name", "Ada Brook", "--role", "trainer,operator", "--role", "administrator");
        assertThat(run(false, "list"))
                .containsExactly(
                        "id | name | roles",
                        "p-01 | Ada Brook | operator, trainer, administrator",
                        "Nobody has a passphrase yet, so whoever names themself is believed."
                                + " An administrator sets the first: wickbench --as ID people passphrase");
        assertThat(run(true, "list"))
                .containsExactly(
                        "[{\"id\":\"p-01\",\"name\":\"Ada Brook\",\"roles\":[\"operator\",\"trainer\",\"administrator\"]}]");
    }

    @Test
    void anUnknownRoleIsNamedWithThoseThereAre() {
        assertThat(run(false, "add", "p-01", "--name", "Ada Brook", "--role", "boss"))
                .containsExactly("--role: expected one of operator, trainer, stock-keeper, reviewer, releaser,"
                        + " administrator, found 'boss'");
        assertThat(house.people().all()).isEmpty();
    }

    /** Runs a command as p-01 and returns what it printed, or why it ended. */
    private List<String> run(boolean json, String... arguments) {
        HeardTerminal terminal = HeardTerminal.of(new PersonId("p-01"), json);
        CommandLine line = new CommandLine(
                        new PeopleCommands(house.people(), house.signIn(), house.credentials(), house.recovery())
                                .commands(terminal))
                .registerConverter(PersonId.class, PersonId::new)
                .setExecutionExceptionHandler((e, command, result) -> {
                    assertThat(e).isInstanceOf(BadInput.class);
                    terminal.note(e.getMessage());
                    return 2;
                });
        line.execute(arguments);
        return terminal.printed();
    }
}
