package wickbench.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.stations.TwoStations.ADA;
import static wickbench.stations.TwoStations.append;
import static wickbench.stations.TwoStations.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.clash.Clash;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;
import wickbench.training.book.Coach;
import wickbench.training.book.IndexedBook;
import wickbench.training.book.JournalPen;

/** A person authorised at one station and suspended at another, or by a clock that is wrong. */
class CompetenceClashTest {
    private static final Actor TRAINER = Actor.of(new PersonId("p-02"));

    @TempDir
    Path root;

    private TwoStations site;
    private House bench;
    private House quality;

    @BeforeEach
    void open() throws IOException {
        site = new TwoStations(root, Duration.ofMinutes(-7));
        bench = site.bench;
        quality = site.quality;
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void who_is_authorised_at_one_station_and_suspended_at_the_other_stays_suspended_until_it_is_settled() {
        MethodId method = new MethodId("m-0");
        training(quality).authorise(ADA, method, Optional.empty(), "round passed", TRAINER);
        site.exchange();
        site.apart(() -> {
            training(bench).authorise(ADA, method, Optional.empty(), "renewed", TRAINER);
            training(quality).suspend(ADA, Optional.of(method), Optional.empty(), "overlooks faint lines", TRAINER);
        });
        Clash clash = bench.index.clash("competence:p-01:m-0").orElseThrow();
        assertThat(quality.index.clash("competence:p-01:m-0")).contains(clash);
        for (House house : site.both()) {
            Competence now = competence(house, method);
            assertThat(now.state()).as(house.home.folder().toString()).isEqualTo(CompetenceState.SUSPENDED);
            assertThat(now.suspensions()).hasSize(1);
        }
        EntryRef renewed = clash.decisions().stream()
                .filter(ref -> ref.station().value().equals("bench"))
                .findFirst()
                .orElseThrow();
        desk(bench).settle("competence:p-01:m-0", renewed, "another person was meant", ADA, Optional.empty());
        site.exchange();
        assertThat(competence(bench, method).state()).isEqualTo(CompetenceState.AUTHORISED);
        assertThat(competence(quality, method)).isEqualTo(competence(bench, method));
    }

    @Test
    void a_suspension_that_a_wrong_clock_puts_before_any_authorisation_suspends_all_the_same() {
        MethodId method = new MethodId("m-0");
        training(bench).authorise(ADA, method, Optional.empty(), "round passed", TRAINER);
        site.exchange();
        Json.Obj body = Json.object()
                .with("person", ADA.value())
                .with("method", method.value())
                .with("at", "2020-01-01T00:00:00.000Z")
                .with("reason", "overlooks faint lines");
        append(quality, new Draft(UUID.randomUUID(), TRAINER.who(), "training.suspended", 1, body));
        site.exchange();
        assertThat(competence(bench, method).state()).isEqualTo(CompetenceState.SUSPENDED);
        training(bench).restore(ADA, method, Optional.empty(), "drilled, round passed", TRAINER);
        assertThat(competence(bench, method).state()).isEqualTo(CompetenceState.AUTHORISED);
    }

    private static IndexedBook book(House house) {
        return new IndexedBook(house.home, house.index, () -> Site.of(Optional.empty(), house.journal.founding()));
    }

    private static Coach training(House house) {
        return new Coach(book(house), new JournalPen(house.home, house.journal, (act, draft, passphrase) -> draft));
    }

    /** How it stands a little later, when the late clock has caught up too. */
    private Competence competence(House house, MethodId method) {
        return book(house).competence(ADA, method, bench.home.clock().instant().plus(Duration.ofMinutes(1)));
    }
}
