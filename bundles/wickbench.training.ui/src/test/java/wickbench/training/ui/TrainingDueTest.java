package wickbench.training.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.method.Format;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.shell.Due;
import wickbench.training.Design;
import wickbench.training.PassRule;
import wickbench.training.RoundPlan;
import wickbench.training.StripClass;
import wickbench.widgets.Meaning;

/** What the top bar says of training. */
class TrainingDueTest {
    private static final Actor TRAINER = Actor.of(TestHouse.TRAINER);
    private static final MethodId METHOD = new MethodId("hazelnut-swab-dry");
    private static final PersonId OP_2 = new PersonId("op-02");

    @TempDir
    private Path folder;

    private TestHouse house;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        house.close();
    }

    private List<Due> due() {
        return new TrainingDue(house.doors().home(), house.doors().competences()).due();
    }

    @Test
    void nothing_is_due_where_nobody_is_authorised_and_no_round_is_open() {
        assertThat(due()).isEmpty();
        house.peopled();
        assertThat(due()).isEmpty();
    }

    @Test
    void each_kind_of_thing_has_one_word_and_leads_to_where_it_is_dealt_with() {
        house.peopled().joinedBy(OP_2, "Una Fell");
        LocalDate soon = LocalDate.ofInstant(
                        house.doors().now(), house.doors().competences().zone())
                .plusDays(3);
        house.doors().training().authorise(TestHouse.OP, METHOD, Optional.of(soon), "round passed", TRAINER);
        Due ends = only();
        assertThat(ends.mark().word()).isEqualTo("op-01: authorisation ends");
        assertThat(ends.argument()).isEqualTo("op-01");

        opened();
        assertThat(due())
                .extracting(each -> each.mark().word())
                .containsExactly("2 still call in rounds", "op-01: authorisation ends");
        assertThat(due().get(0).argument()).isEqualTo("rounds:spring");

        house.revised();
        Due unread = due().get(0);
        assertThat(unread.mark().word()).isEqualTo("op-01 owes a new version");
        assertThat(unread.mark().meaning()).isEqualTo(Meaning.CAUTION);
        house.doors().training().suspend(TestHouse.OP, Optional.of(METHOD), Optional.empty(), "missed", TRAINER);
        // a suspension is no work that waits
        assertThat(only().mark().word()).isEqualTo("2 still call in rounds");
    }

    private Due only() {
        assertThat(due()).hasSize(1);
        return due().get(0);
    }

    private void opened() {
        RoundPlan plan = new RoundPlan(
                "spring",
                METHOD,
                Format.SANDWICH_HOOK,
                Duration.ofSeconds(1),
                Duration.ofSeconds(60),
                new Design(Map.of(StripClass.BLANK, 2), new PassRule(0, 0, 0, 0, 0)),
                List.of(TestHouse.OP, OP_2),
                List.of(),
                List.of(),
                "made by the laboratory");
        house.doors().blind().rounds().open(plan, TRAINER);
    }
}
