package wickbench.figures;

import java.util.List;
import java.util.OptionalInt;
import wickbench.api.words.Words;

/**
 * Ends a computation that has no answer for this input.
 *
 * <p>Carries a code, which is the key of its words, with facts; where the input is a table, the row, counted from 0.
 */
public final class NoAnswer extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final Words WORDS = Words.of(NoAnswer.class, "figures");

    private final String field;
    private final String code;
    private final transient List<Object> facts;
    private final int row;

    private NoAnswer(String field, String code, List<Object> facts, int row) {
        super(field + ": " + code + " " + facts);
        this.field = field;
        this.code = code;
        this.facts = facts;
        this.row = row;
    }

    /**
     * @param field the input that is wrong; empty when all of it is meant
     * @param code why, for example {@code count.above-total}
     * @param facts what the words tell, in their order
     */
    public static NoAnswer of(String field, String code, Object... facts) {
        return new NoAnswer(field, code, List.of(facts), -1);
    }

    /** Returns this refusal, said of one row of a table, counted from 0. */
    public NoAnswer inRow(int which) {
        return new NoAnswer(field, code, facts, which);
    }

    public String field() {
        return field;
    }

    public String code() {
        return code;
    }

    public OptionalInt row() {
        return row < 0 ? OptionalInt.empty() : OptionalInt.of(row);
    }

    /** Returns the reason in one sentence, in the language of the user. */
    public String text() {
        return WORDS.get(code, facts.toArray());
    }
}
