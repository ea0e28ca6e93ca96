package wickbench.people.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickbench.api.authority.SecretWatch.Notice;
import wickbench.api.authority.SecretWatch.Notice.Ending;
import wickbench.api.authority.SecretWatch.Notice.Guessed;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.reading.Outcome;
import wickbench.shell.Due;

class SecretsDueTest {
    private static final PersonId BO = new PersonId("bo");

    @Test
    void each_says_what_and_leads_to_whom() {
        List<Due> due = due(
                new Guessed(Optional.of(BO), 6, Instant.parse("2026-03-02T06:02:00Z")),
                new Ending(BO, LocalDate.of(2026, 4, 1)));
        assertThat(due)
                .extracting(item -> item.mark().word())
                .containsExactly(
                        "bo: 6 wrong passphrases in a row, locked until 07:02",
                        "Passphrase of bo holds until 2026-04-01");
        assertThat(due).extracting(Due::page).containsOnly("people");
        assertThat(due).extracting(Due::argument).containsOnly("bo");
    }

    @Test
    void a_few_at_most_and_ids_that_nobody_has_too() {
        Guessed nobody = new Guessed(Optional.empty(), 5, Instant.EPOCH);
        assertThat(due(nobody, nobody, nobody))
                .hasSize(2)
                .allMatch(item -> item.mark().word().startsWith("Unknown ids: 5"));
    }

    private static List<Due> due(Notice... notices) {
        Site site = new Site(Optional.empty(), ZoneId.of("Europe/Vienna"), List.of(), 7, List.of(Outcome.values()));
        return new SecretsDue(() -> List.of(notices), () -> site).due();
    }
}
