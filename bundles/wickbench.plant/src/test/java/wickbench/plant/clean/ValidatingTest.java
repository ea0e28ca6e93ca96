package wickbench.plant.clean;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Visual;
import wickbench.plant.clean.Validating.Told;
import wickbench.plant.clean.Validation.Lack;
import wickbench.plant.clean.Validation.Why;
import wickbench.plant.clean.Validity.Move;
import wickbench.plant.site.Sampling;

class ValidatingTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Sampling POINT = new Sampling("rim", new MethodId("milk-swab-wet"));
    private static final Series SERIES =
            new Series("CP", "milk", List.of("hardest-soil"), Set.of("milk"), List.of(POINT));

    /** Every move in every state, by a table of its own; a dash is a move that cannot be made. */
    @ParameterizedTest
    @EnumSource(Validity.class)
    void every_state_answers_every_move(Validity state) {
        String row = switch (state) {
            case NEVER -> "UNDER_WAY - - - - -";
            case UNDER_WAY -> "UNDER_WAY UNDER_WAY UNDER_WAY VALIDATED UNDER_WAY -";
            case VALIDATED -> "REVALIDATING - - - LAPSED LAPSED";
            case REVALIDATING -> "REVALIDATING REVALIDATING UNDER_WAY VALIDATED UNDER_WAY UNDER_WAY";
            case LAPSED -> "UNDER_WAY - - - - -";
        };
        List<String> cells = Stream.of(Move.values())
                .map(move -> state.after(move).map(Enum::name).orElse("-"))
                .toList();
        assertThat(String.join(" ", cells)).isEqualTo(row);
        assertThat(state.usable()).isEqualTo(state == Validity.VALIDATED || state == Validity.REVALIDATING);
    }

    /** Three consecutive cleans: common practice, no source. */
    @Test
    void three_passes_in_a_row_and_quality_behind_them() {
        assertThat(fold(clean(1), SERIES, pass(), pass(), confirm()).state()).isEqualTo(Validity.UNDER_WAY);
        Validation ready = fold(clean(1), SERIES, pass(), pass(), pass());
        assertThat(ready.ready()).isTrue();
        assertThat(ready.state().usable()).isFalse();
        Validation shown = fold(clean(1), SERIES, pass(), pass(), pass(), confirm());
        assertThat(shown.state()).isEqualTo(Validity.VALIDATED);
        assertThat(shown.covers(Set.of("milk"))).isTrue();
        assertThat(shown.covers(Set.of("milk", "hazelnut"))).isFalse();
    }

    @Test
    void a_fail_starts_again() {
        Validation again = fold(clean(1), SERIES, pass(), pass(), fail(), pass(), confirm());
        assertThat(again.state()).isEqualTo(Validity.UNDER_WAY);
        assertThat(again.passes()).isOne();
        assertThat(again.runs()).hasSize(4);
        assertThat(fold(clean(1), SERIES, pass(), pass(), pass(), confirm(), SERIES, fail())
                        .state()
                        .usable())
                .isFalse();
    }

    @Test
    void it_lapses_by_its_date_and_by_a_change() {
        List<Object> shown = List.of(clean(1), SERIES, pass(), pass(), pass(), confirm());
        LocalDate last = DAY.plusDays(30);
        assertThat(at(last, shown).state()).isEqualTo(Validity.VALIDATED);
        assertThat(at(last.plusDays(1), shown).state()).isEqualTo(Validity.LAPSED);
        assertThat(fold(with(shown, clean(2))).state()).isEqualTo(Validity.LAPSED);
        assertThat(fold(with(shown, new Changed("CP", "new nozzle"))).why()).contains("new nozzle");
        assertThat(fold(with(shown, clean(1))).state()).isEqualTo(Validity.VALIDATED);
        assertThat(fold(with(with(shown, SERIES), pass())).state()).isEqualTo(Validity.REVALIDATING);
    }

    @Test
    void the_eye_comes_first() {
        SeriesRun soiled = new SeriesRun("CP", Visual.SOILED, List.of(), Instant.EPOCH);
        SeriesRun seen = new SeriesRun("CP", Visual.CLEAN, List.of(), Instant.EPOCH);
        assertThat(Validating.lacks(SERIES, soiled, point -> Optional.empty()))
                .containsExactly(new Lack(Why.SOILED, ""));
        assertThat(Validating.lacks(SERIES, seen, point -> Optional.of(Why.NOT_TESTED)))
                .containsExactly(new Lack(Why.NOT_TESTED, "rim"));
        assertThat(Validating.lacks(SERIES, seen, point -> Optional.of(Why.NOT_NEGATIVE)))
                .containsExactly(new Lack(Why.NOT_NEGATIVE, "rim"));
        assertThat(Validating.lacks(SERIES, seen, point -> Optional.empty())).isEmpty();
    }

    /** Whatever happens, a clean is usable only after three passes that nothing came between, which quality confirmed. */
    @Property(tries = 300)
    void nothing_else_makes_a_clean_usable(@ForAll List<@net.jqwik.api.constraints.IntRange(max = 5) Integer> acts) {
        List<Object> told = new ArrayList<>(List.of(clean(1)));
        boolean open = false;
        boolean valid = false;
        int row = 0;
        for (int act : acts) {
            Object what = List.of(SERIES, pass(), fail(), confirm(), new Changed("CP", "x"), pass())
                    .get(act);
            told.add(what);
            if (what == SERIES) {
                open = true;
                row = 0;
            } else if (act == 3 && open && row >= 3) {
                valid = true;
                open = false;
                row = 0;
            } else if (act == 4) {
                // a series under way goes on and begins to count anew; without one, the next must be opened
                valid = false;
                row = 0;
            } else if (act == 2 && open) {
                valid = false;
                row = 0;
            } else if ((act == 1 || act == 5) && open) {
                row++;
            }
        }
        assertThat(fold(told.toArray()).state().usable()).isEqualTo(valid);
    }

    private static List<Object> with(List<Object> told, Object more) {
        return Stream.concat(told.stream(), Stream.of(more)).toList();
    }

    private static Validation fold(List<Object> told) {
        return at(DAY, told);
    }

    private static Validation fold(Object... told) {
        return at(DAY, List.of(told));
    }

    private static Validation at(LocalDate today, List<Object> told) {
        return Validating.fold(
                clean(1),
                told.stream().map(what -> new Told(DAY, what)).toList(),
                today,
                (series, run) -> run.visual() == Visual.SOILED ? List.of(new Lack(Why.SOILED, "")) : List.of());
    }

    private static Clean clean(int edition) {
        return new Clean("CP", "L2", "Wash", Clean.How.WET, 30, edition, Set.of());
    }

    private static SeriesRun pass() {
        return new SeriesRun("CP", Visual.CLEAN, List.of(new UUID(1, 1)), Instant.EPOCH);
    }

    private static SeriesRun fail() {
        return new SeriesRun("CP", Visual.SOILED, List.of(), Instant.EPOCH);
    }

    private static Confirmed confirm() {
        return new Confirmed("CP", DAY.plusDays(30), "three cleans in a row");
    }
}
