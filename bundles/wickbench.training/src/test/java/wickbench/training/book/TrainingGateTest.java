package wickbench.training.book;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.training.TrainingHome.METHOD;
import static wickbench.training.TrainingHome.OP;
import static wickbench.training.TrainingHome.OTHER;
import static wickbench.training.TrainingHome.TRAINER;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Question;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.reading.Clearances;
import wickbench.testing.Meets;
import wickbench.training.TrainingHome;

class TrainingGateTest {
    @TempDir
    private Path folder;

    private TrainingHome home;

    @BeforeEach
    void open() {
        home = new TrainingHome(folder).issued();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void before_anybody_was_authorised_nobody_can_say() {
        assertThat(ask(OP, Optional.empty())).isEqualTo(new Answer.NotChecked("training"));
    }

    @Test
    void who_is_authorised_is_cleared_with_what_it_rests_on() {
        home.authorised(OP);
        assertThat(((Answer.Cleared) ask(OP, Optional.empty())).facts())
                .containsEntry("operator", "authorised")
                .containsEntry("operator_until", "2027-03-01")
                .containsEntry("operator_version_read", "1");
    }

    @Test
    @Meets({"21 CFR 117.4(b), (d)", "ISO/IEC 17025 6.2.2 to 6.2.6"})
    void each_other_state_refuses_by_its_code() {
        home.authorised(OP);
        assertThat(codes(ask(OTHER, Optional.empty()))).containsExactly("operator.not-authorised");
        home.after(Duration.ofDays(1)).revised();
        assertThat(codes(ask(OP, Optional.empty()))).containsExactly("operator.lapsed");
        home.after(Duration.ofDays(400));
        assertThat(codes(ask(OP, Optional.empty()))).containsExactly("operator.lapsed");
        home.coach.suspend(OP, Optional.of(METHOD), Optional.empty(), "x", TRAINER);
        assertThat(codes(ask(OP, Optional.empty()))).containsExactly("operator.not-authorised");
    }

    @Test
    void under_an_authorised_observer_anybody_may_test_and_under_no_other() {
        home.authorised(OP);
        assertThat(clearance(OTHER, Optional.of(OP))).isEqualTo(Clearance.State.CAUTION);
        assertThat(clearance(OTHER, Optional.empty())).isEqualTo(Clearance.State.REFUSED);
        PersonId nobody = new PersonId("op-03");
        assertThat(codes(ask(OTHER, Optional.of(nobody))))
                .containsExactly("operator.not-authorised", "observer.not-authorised");
        assertThat(clearance(OTHER, Optional.of(nobody))).isEqualTo(Clearance.State.REFUSED);
        assertThat(codes(ask(OTHER, Optional.of(OTHER)))).contains("observer.not-authorised");
    }

    /** F38: the term passes between the dip and the look; what was begun in time stands, what begins later does not. */
    @Test
    void a_strip_begun_in_time_stands_and_one_begun_later_is_flagged() {
        home.authorised(OP)
                .coach
                .authorise(OP, METHOD, Optional.of(java.time.LocalDate.parse("2026-03-02")), "until tonight", TRAINER);
        // 22:58 UTC is 23:58 in Vienna; the strip develops beyond midnight
        home.clock.moveTo(Instant.parse("2026-03-02T23:03:00Z"));
        Kept running = home.read(OP, Optional.empty());
        assertThat(running.reading().reading().times().started().orElseThrow())
                .isBefore(Instant.parse("2026-03-02T23:00:00Z"));
        assertThat(rules(running)).doesNotContain("operator.lapsed");
        home.after(Duration.ofHours(1));
        Kept late = home.read(OP, Optional.empty());
        assertThat(rules(late)).contains("operator.lapsed");
        assertThat(late.reading().verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(clearance(OP, Optional.empty())).isEqualTo(Clearance.State.REFUSED);
    }

    private Answer ask(PersonId operator, Optional<PersonId> observer) {
        return home.gate.ask(new Question(
                new MethodRef(METHOD, 1),
                Route.SWAB_DRY,
                new LotId("HZ-1"),
                operator,
                observer,
                false,
                home.clock.instant()));
    }

    private Clearance.State clearance(PersonId operator, Optional<PersonId> observer) {
        return Clearances.of(ask(operator, observer), observer.isPresent()).state();
    }

    private static List<String> codes(Answer answer) {
        return ((Answer.Refused) answer)
                .reasons().stream().map(Answer.Reason::code).toList();
    }

    private static List<String> rules(Kept kept) {
        return kept.reading().verdict().findings().stream().map(Finding::rule).toList();
    }
}
