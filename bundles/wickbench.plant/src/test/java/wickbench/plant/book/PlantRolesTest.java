package wickbench.plant.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.plant.book.PlantHome.QUALITY;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.check.Refusal;
import wickbench.api.method.MethodId;
import wickbench.api.person.Role;
import wickbench.api.reading.Visual;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.site.Sampling;

/** Which act each deed passes the authority as, below every page and command. */
class PlantRolesTest {
    private static final Sampling SEAL = new Sampling("L2 pump seal", new MethodId("milk-swab-wet"));

    @TempDir
    private Path folder;

    private final List<Act> asked = new ArrayList<>();

    @Test
    void quality_states_and_stands_behind_and_everybody_may_say_what_happened() {
        Authority listening = (act, draft, passphrase) -> {
            asked.add(act);
            return draft;
        };
        try (PlantHome home = new PlantHome(folder.resolve("home"), listening).furnished()) {
            assertThat(asked).isNotEmpty().containsOnly(Act.KEEP_PLANT);
            asked.clear();
            home.keeping.changed(new ChangeMade("L2", "milk", "plain", home.book.now()), QUALITY);
            assertThat(asked).isEmpty();
            Series series = new Series("CP-2n", "milk", List.of("hardest-soil"), Set.of("milk"), List.of(SEAL));
            home.keeping.open(series, QUALITY);
            for (int i = 0; i < Series.PASSES; i++) {
                Instant cleaned = home.book.now();
                UUID read = home.read(SEAL.place(), SEAL.method().value(), false);
                home.keeping.ran(new SeriesRun("CP-2n", Visual.CLEAN, List.of(read), cleaned), QUALITY);
            }
            home.keeping.confirm(new Confirmed("CP-2n", LocalDate.parse("2027-03-01"), "three"), QUALITY);
            home.keeping.lapse(new Changed("CP-2n", "new nozzle"), QUALITY);
            home.after(Duration.ofDays(20));
            home.keeping.excuse("L2-weekly", Instant.parse("2026-03-08T23:00:00Z"), "stood still", QUALITY);
            assertThat(asked).containsExactly(Act.KEEP_PLANT, Act.VALIDATE_CLEAN, Act.KEEP_PLANT, Act.EXCUSE_DUE);
        }
        assertThat(Act.KEEP_PLANT.roles()).containsOnly(Role.REVIEWER);
        assertThat(Act.VALIDATE_CLEAN.signed()).isTrue();
        assertThat(Act.EXCUSE_DUE.signed()).isTrue();
    }

    @Test
    void what_the_authority_refuses_is_not_done() {
        Authority refusing = (act, draft, passphrase) -> {
            throw new Refusal("people.role", "not yours");
        };
        try (PlantHome home = new PlantHome(folder.resolve("home"), refusing)) {
            long before = home.journal.size(home.journal.stations().get(0));
            assertThatThrownBy(() -> home.keeping.state(PlantHome.mill(), QUALITY))
                    .isInstanceOf(Refusal.class);
            assertThat(home.journal.size(home.journal.stations().get(0))).isEqualTo(before);
        }
    }
}
