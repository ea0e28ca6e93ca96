package wickbench.plant.clean;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.words.Coded;

/** Whether a clean was shown to work. */
public enum Validity implements Coded {
    /** Nobody has begun. */
    NEVER,
    /** Being shown; not usable yet. */
    UNDER_WAY,
    /** Shown, confirmed, and its date has not passed. */
    VALIDATED,
    /** Still shown, and being shown anew before its date. */
    REVALIDATING,
    /** It was shown once; its date passed or something changed. */
    LAPSED;

    /** What happens to it. */
    public enum Move implements Coded {
        OPEN,
        PASS,
        FAIL,
        CONFIRM,
        CHANGE,
        EXPIRE
    }

    private static final Map<Validity, Map<Move, Validity>> TABLE = table();

    /** Tells whether lines may be changed by it. */
    public boolean usable() {
        return this == VALIDATED || this == REVALIDATING;
    }

    /** Returns where a move leads; empty where it cannot be made. */
    public Optional<Validity> after(Move move) {
        return Optional.ofNullable(TABLE.get(this).get(move));
    }

    /** Every state has a row, every move that can be made in it a cell; what has none cannot be made. */
    private static Map<Validity, Map<Move, Validity>> table() {
        Map<Validity, Map<Move, Validity>> table = new EnumMap<>(Validity.class);
        table.put(NEVER, new EnumMap<>(Map.of(Move.OPEN, UNDER_WAY)));
        table.put(
                UNDER_WAY,
                new EnumMap<>(Map.of(
                        Move.OPEN, UNDER_WAY,
                        Move.PASS, UNDER_WAY,
                        Move.FAIL, UNDER_WAY,
                        Move.CONFIRM, VALIDATED,
                        Move.CHANGE, UNDER_WAY)));
        table.put(VALIDATED, new EnumMap<>(Map.of(Move.OPEN, REVALIDATING, Move.CHANGE, LAPSED, Move.EXPIRE, LAPSED)));
        table.put(
                REVALIDATING,
                new EnumMap<>(Map.of(
                        Move.OPEN, REVALIDATING,
                        Move.PASS, REVALIDATING,
                        // what failed once in the series does not count as shown any more
                        Move.FAIL, UNDER_WAY,
                        Move.CONFIRM, VALIDATED,
                        Move.CHANGE, UNDER_WAY,
                        Move.EXPIRE, UNDER_WAY)));
        table.put(LAPSED, new EnumMap<>(Map.of(Move.OPEN, UNDER_WAY)));
        return table;
    }
}
