package wickbench.reading;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Verdict;
import wickbench.api.words.Words;

/** Outcomes and their levels in words, in the user's language. */
public final class OutcomeWords {
    private static final List<Owed> MOST_URGENT_FIRST = List.of(
            Owed.HOLD,
            Owed.RE_CLEAN,
            Owed.RE_TEST,
            Owed.DECIDE,
            Owed.BRACKET,
            Owed.REPEAT_DILUTED,
            Owed.REPEAT,
            Owed.RUN_CONTROL);

    private OutcomeWords() {}

    /** Returns one or two words, for example {@code Negative}. */
    public static String text(Outcome outcome) {
        return ReadingWords.text(outcome);
    }

    /**
     * Returns the outcome of a strip whose sample was thinned, for example {@code Negative at ×100}.
     *
     * @param dilution how many times thinner than the method's own steps; 1 is undiluted and adds no words
     */
    public static String text(Outcome outcome, BigDecimal dilution) {
        return diluted(dilution)
                ? ReadingWords.words().get("outcome.diluted", text(outcome), Decimals.shown(dilution))
                : text(outcome);
    }

    /**
     * Returns what the outcome says in one sentence; that of a Negative never promises absence, and that of a diluted one
     * says that it only bounds the amount.
     */
    public static String sentence(Verdict verdict, BigDecimal dilution) {
        String sign = verdict.sign() ? ".sign" : "";
        String thinned = verdict.outcome() == Outcome.NEGATIVE && diluted(dilution) ? ".diluted" : "";
        return ReadingWords.words()
                .get("sentence." + verdict.outcome().code() + sign + thinned, Decimals.shown(dilution));
    }

    private static boolean diluted(BigDecimal dilution) {
        return dilution.compareTo(BigDecimal.ONE) > 0;
    }

    /** Returns what is owed because of it, most urgent first. */
    public static List<String> owed(Verdict verdict) {
        return MOST_URGENT_FIRST.stream()
                .filter(verdict.owed()::contains)
                .map(ReadingWords::text)
                .toList();
    }

    /** Returns the interval with unit and basis, for example {@code below 10 mg/kg total protein}. */
    public static String level(Level level) {
        Words words = ReadingWords.words();
        return words.get(
                "level." + (level.low().isPresent() ? "from" : "open") + "-"
                        + (level.high().isPresent() ? "below" : "open"),
                text(level.low()),
                text(level.high()),
                level.unit().symbol(),
                ReadingWords.text(level.basis()));
    }

    /** Returns at which probability the method detects the upper end, if it states one. */
    public static Optional<String> probability(Level level) {
        return level.probability()
                .map(some -> ReadingWords.words().get("level.probability", Decimals.shown(some.movePointRight(2))));
    }

    private static String text(Optional<BigDecimal> end) {
        return end.map(Decimals::shown).orElse("");
    }
}
