package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Clearance.State;

class ClearancesTest {
    private static final Reason LAPSED = new Reason("operator.lapsed", "2026-03-01", "2026-03-02");
    private static final Reason EXPIRED = new Reason("lot.expired", "2026-03-01", "2026-03-02");

    @Test
    void what_is_cleared_stays_so() {
        assertThat(Clearances.of(new Answer.Cleared("stock", Map.of()), false))
                .isEqualTo(new Clearance("stock", State.CLEARED, List.of()));
    }

    @ParameterizedTest
    @CsvSource({"false, NOT_CHECKED", "true, REFUSED"})
    void an_absent_neighbour_refuses_where_the_site_requires_it(boolean required, State state) {
        Clearance said = Clearances.of(new Answer.NotChecked("training", required), true);

        assertThat(said.state()).isEqualTo(state);
        assertThat(said.reasons()).extracting(Reason::code).containsExactly("training-not-checked");
    }

    @Test
    void an_observer_makes_good_what_one_can_make_good_and_nothing_else() {
        assertThat(refused(true, LAPSED)).isEqualTo(State.CAUTION);
        assertThat(refused(false, LAPSED)).isEqualTo(State.REFUSED);
        assertThat(refused(true, LAPSED, EXPIRED)).isEqualTo(State.REFUSED);
        assertThat(refused(true)).isEqualTo(State.REFUSED);
    }

    @ParameterizedTest
    @CsvSource({
        "lot.expired, Take a lot that is in date",
        "stock-not-checked, Nobody is there to ask: install b",
        "lot.of-another-world, Ask quality"
    })
    void every_reason_says_what_to_do(String code, String words) {
        assertThat(Clearances.toDo(new Reason(code, "a", "b"))).startsWith(words);
    }

    private static State refused(boolean observed, Reason... reasons) {
        return Clearances.of(new Answer.Refused("stock", Map.of(), List.of(reasons)), observed)
                .state();
    }
}
