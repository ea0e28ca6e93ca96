package wickbench.ledger.acts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.reading.Owed;
import wickbench.api.words.Coded;

/** Every state against every move, as {@code docs/ledger.md} has the table; common practice, no source. */
class MoveTest {
    private static final String HEADER = "hold, re-clean, re-test, repeat, rework, relabel, destroy, done, release";

    @ParameterizedTest
    @CsvSource(textBlock = """
        free,           held, free,           free,           free,           -,         -,              -,              -,          -
        held,           -,    held,           held,           held,           in-rework, in-relabelling, in-destruction, -,          released
        in-rework,      -,    in-rework,      in-rework,      in-rework,      -,         -,              in-destruction, reworked,   -
        reworked,       -,    reworked,       reworked,       reworked,       in-rework, in-relabelling, in-destruction, -,          released
        in-relabelling, -,    in-relabelling, in-relabelling, in-relabelling, -,         -,              in-destruction, relabelled, -
        relabelled,     held, relabelled,     relabelled,     relabelled,     -,         -,              -,              -,          -
        in-destruction, -,    in-destruction, in-destruction, in-destruction, -,         -,              -,              destroyed,  -
        destroyed,      -,    destroyed,      destroyed,      destroyed,      -,         -,              -,              -,          -
        released,       held, released,       released,       released,       -,         -,              -,              -,          -
        """)
    void the_table_is_whole(org.junit.jupiter.params.aggregator.ArgumentsAccessor row) {
        ProductState state = Coded.of(ProductState.class, row.getString(0));
        String[] moves = HEADER.split(", ");
        assertThat(row.size()).isEqualTo(moves.length + 1).isEqualTo(Move.values().length + 1);
        for (int i = 0; i < moves.length; i++) {
            String next =
                    Coded.of(Move.class, moves[i]).from(state).map(Coded::code).orElse("-");
            assertThat(next).as("%s from %s", moves[i], state.code()).isEqualTo(row.getString(i + 1));
        }
    }

    @Test
    void nothing_but_a_release_lets_held_product_go_as_it_is() {
        for (ProductState state : ProductState.values()) {
            for (Move move : Move.values()) {
                boolean lets = !state.mayGo()
                        && move.from(state).filter(ProductState::mayGo).isPresent();
                assertThat(lets)
                        .as("%s from %s", move, state)
                        .isEqualTo(move == Move.RELEASE && move.from(state).isPresent()
                                || move == Move.DONE && state == ProductState.IN_RELABELLING);
            }
        }
    }

    @Test
    void every_state_is_reached_and_what_is_destroyed_stays_so() {
        Set<ProductState> reached = EnumSet.of(ProductState.FREE);
        for (int i = 0; i < ProductState.values().length; i++) {
            for (ProductState state : EnumSet.copyOf(reached)) {
                for (Move move : Move.values()) {
                    move.from(state).ifPresent(reached::add);
                }
            }
        }
        assertThat(reached).containsExactlyInAnyOrder(ProductState.values());
        for (Move move : Move.values()) {
            assertThat(move.from(ProductState.DESTROYED).orElse(ProductState.DESTROYED))
                    .isEqualTo(ProductState.DESTROYED);
        }
    }

    @Test
    void orders_are_what_is_owed() {
        assertThat(Move.HOLD.orders()).contains(Owed.HOLD);
        assertThat(Move.RE_CLEAN.orders()).contains(Owed.RE_CLEAN);
        assertThat(Move.RE_TEST.orders()).contains(Owed.RE_TEST);
        assertThat(Move.REPEAT.orders()).contains(Owed.REPEAT);
        assertThat(Move.RELEASE.orders()).isEmpty();
    }
}
