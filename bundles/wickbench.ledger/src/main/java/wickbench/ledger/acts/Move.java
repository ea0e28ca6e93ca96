package wickbench.ledger.acts;

import static wickbench.ledger.acts.ProductState.DESTROYED;
import static wickbench.ledger.acts.ProductState.FREE;
import static wickbench.ledger.acts.ProductState.HELD;
import static wickbench.ledger.acts.ProductState.IN_DESTRUCTION;
import static wickbench.ledger.acts.ProductState.IN_RELABELLING;
import static wickbench.ledger.acts.ProductState.IN_REWORK;
import static wickbench.ledger.acts.ProductState.RELABELLED;
import static wickbench.ledger.acts.ProductState.RELEASED;
import static wickbench.ledger.acts.ProductState.REWORKED;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.reading.Owed;
import wickbench.api.words.Coded;

/** What is decided because of a result, and what it does to the product: the whole table. What does not stand here is not allowed. */
public enum Move implements Coded {
    /** Also what was let go already, when it turns out that it should not have been. */
    HOLD(Owed.HOLD, Map.of(FREE, HELD, RELEASED, HELD, RELABELLED, HELD)),
    RE_CLEAN(Owed.RE_CLEAN, unmoved()),
    RE_TEST(Owed.RE_TEST, unmoved()),
    /** The strip once more. */
    REPEAT(Owed.REPEAT, unmoved()),
    REWORK(Map.of(HELD, IN_REWORK, REWORKED, IN_REWORK)),
    RELABEL(Map.of(HELD, IN_RELABELLING, REWORKED, IN_RELABELLING)),
    DESTROY(Map.of(
            HELD, IN_DESTRUCTION,
            REWORKED, IN_DESTRUCTION,
            IN_REWORK, IN_DESTRUCTION,
            IN_RELABELLING, IN_DESTRUCTION)),
    /** What was decided has been done. */
    DONE(Map.of(IN_REWORK, REWORKED, IN_RELABELLING, RELABELLED, IN_DESTRUCTION, DESTROYED)),
    RELEASE(Map.of(HELD, RELEASED, REWORKED, RELEASED));

    private final Optional<Owed> orders;
    private final Map<ProductState, ProductState> table;

    Move(Map<ProductState, ProductState> table) {
        this(null, table);
    }

    Move(Owed orders, Map<ProductState, ProductState> table) {
        this.orders = Optional.ofNullable(orders);
        this.table = table;
    }

    /** Returns the state after this move; empty when it is not allowed. */
    public Optional<ProductState> from(ProductState state) {
        return Optional.ofNullable(table.get(state));
    }

    /** Returns what is owed from then on. */
    public Optional<Owed> orders() {
        return orders;
    }

    private static Map<ProductState, ProductState> unmoved() {
        return Arrays.stream(ProductState.values()).collect(Collectors.toMap(Function.identity(), Function.identity()));
    }
}
