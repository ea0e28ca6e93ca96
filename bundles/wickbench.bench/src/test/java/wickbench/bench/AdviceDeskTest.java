package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Clearance.State;
import wickbench.reading.Clearances;
import wickbench.testing.Meets;

/** What is said before a strip is started. */
class AdviceDeskTest {
    private static final Answer.Reason EXPIRED = new Answer.Reason("lot.expired", "2026-03-02", "2026-02-28");
    private static final Answer.Reason NONE_LEFT = new Answer.Reason("lot.none-left", "0", "1");
    private static final Answer.Reason LAPSED = new Answer.Reason("operator.lapsed", "2026-01-01", "2026-03-02");

    @TempDir
    private Path folder;

    @Test
    @Meets("21 CFR 117.4(b), (d)")
    void absent_neighbours_are_not_checked_and_a_method_in_force_is_cleared() {
        try (BenchHome home = new BenchHome(folder).withMethods()) {
            assertThat(home.advice.gates(now(Route.SWAB_DRY, Optional.empty())))
                    .extracting(Clearance::neighbour, Clearance::state)
                    .containsExactly(
                            tuple("method", State.CLEARED),
                            tuple("stock", State.NOT_CHECKED),
                            tuple("training", State.NOT_CHECKED));
        }
    }

    @Test
    void a_method_that_is_not_in_force_or_has_another_route_is_refused() {
        try (BenchHome home = new BenchHome(folder).withMethods()) {
            Question before = new Question(
                    ref(),
                    Route.SWAB_DRY,
                    new LotId("L77"),
                    new PersonId("ana"),
                    Optional.empty(),
                    false,
                    Instant.parse("2020-01-01T00:00:00Z"));
            assertThat(home.advice.gates(before).get(0).state()).isEqualTo(State.REFUSED);
            assertThat(home.advice
                            .gates(now(Route.RINSE, Optional.empty()))
                            .get(0)
                            .state())
                    .isEqualTo(State.REFUSED);
        }
    }

    @Test
    void a_check_that_the_profile_requires_refuses_and_says_what_to_install() {
        try (BenchHome home = BenchHome.requiring(folder, "stock").withMethods()) {
            Clearance stock = of(home, "stock", Optional.empty());

            assertThat(stock.state()).isEqualTo(State.REFUSED);
            assertThat(Clearances.toDo(stock.reasons().get(0))).contains("install stock");
        }
    }

    @Test
    void a_refusal_names_its_reason_and_what_to_do() {
        try (BenchHome home = home("stock", EXPIRED)) {
            Clearance stock = of(home, "stock", Optional.empty());

            assertThat(stock.state()).isEqualTo(State.REFUSED);
            assertThat(stock.reasons()).containsExactly(EXPIRED);
            assertThat(Clearances.toDo(EXPIRED)).isEqualTo("Take a lot that is in date; set this one aside.");
        }
    }

    @Test
    void what_takes_nothing_from_a_strip_is_a_caution() {
        try (BenchHome home = home("stock", NONE_LEFT)) {
            assertThat(of(home, "stock", Optional.empty()).state()).isEqualTo(State.CAUTION);
        }
    }

    @Test
    @Meets("ISO/IEC 17025 6.2.2 to 6.2.6")
    void a_lapsed_operator_may_start_under_an_observer() {
        try (BenchHome home = home("training", LAPSED)) {
            assertThat(of(home, "training", Optional.empty()).state()).isEqualTo(State.REFUSED);
            assertThat(of(home, "training", Optional.of(new PersonId("bea"))).state())
                    .isEqualTo(State.CAUTION);
        }
    }

    @Test
    void without_a_profile_no_negative_is_drawn() {
        try (BenchHome home = new BenchHome(folder)) {
            assertThat(home.advice.secondReaderShare()).isZero();
            assertThat(home.advice.drawn(new UUID(1, 2))).isFalse();
        }
    }

    private BenchHome home(String neighbour, Answer.Reason reason) {
        Answer answer = new Answer.Refused(neighbour, Map.of(), List.of(reason));
        return new BenchHome(folder, new Gate() {
                    @Override
                    public String neighbour() {
                        return neighbour;
                    }

                    @Override
                    public Answer ask(Question question) {
                        return answer;
                    }
                })
                .withMethods();
    }

    private static Clearance of(BenchHome home, String neighbour, Optional<PersonId> observer) {
        return home.advice.gates(now(Route.SWAB_DRY, observer)).stream()
                .filter(clearance -> clearance.neighbour().equals(neighbour))
                .findFirst()
                .orElseThrow();
    }

    private static MethodRef ref() {
        return Sheets.method("nut-swab").ref();
    }

    private static Question now(Route route, Optional<PersonId> observer) {
        Instant later = Instant.parse("2999-01-01T00:00:00Z");
        return new Question(ref(), route, new LotId("L77"), new PersonId("ana"), observer, false, later);
    }
}
