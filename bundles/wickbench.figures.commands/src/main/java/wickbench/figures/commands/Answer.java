package wickbench.figures.commands;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import wickbench.api.json.Json;
import wickbench.figures.Limits;

/**
 * What a command answers: members for machines, which people get as a table, and remarks for people below it.
 *
 * @param figures the members, in the order people read them
 * @param remarks the formula, its source, what the answer does not say
 */
record Answer(Json.Obj figures, List<String> remarks) {
    private static final double SMALLEST = 1e-300;

    static Answer of() {
        return new Answer(Json.object(), List.of());
    }

    static Answer of(Limits limits) {
        return of().with("estimate", limits.estimate())
                .with("lower", limits.lower())
                .with("upper", limits.upper());
    }

    Answer with(String name, Json value) {
        return new Answer(figures.with(name, value), remarks);
    }

    Answer with(String name, double value) {
        return with(name, number(value));
    }

    Answer with(String name, long value) {
        return new Answer(figures.with(name, value), remarks);
    }

    Answer with(String name, BigDecimal value) {
        return with(name, new Json.Num(Json.Num.rounded(value)));
    }

    Answer with(String name, String value) {
        return new Answer(figures.with(name, value), remarks);
    }

    Answer with(String name, boolean value) {
        return new Answer(figures.with(name, value), remarks);
    }

    Answer with(String name, double[] values) {
        return with(
                name, Json.array(Arrays.stream(values).mapToObj(Answer::number).toList()));
    }

    /** Adds an estimate as an object of {@code value}, {@code lower}, {@code upper}. */
    Answer withLimits(String name, Limits limits) {
        return with(name, limits(limits));
    }

    /** Adds a remark of this bundle's words. */
    Answer saying(String key, Object... values) {
        List<String> more = new ArrayList<>(remarks);
        more.add(FiguresWords.get(key, values));
        return new Answer(figures, more);
    }

    /** Writes a number as people read it, with six digits. */
    static String forPeople(double value) {
        return new BigDecimal(value)
                .round(AnswerPrint.FOR_PEOPLE)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A number that does not exist (a limit that runs to infinity) is null, never a made-up value. */
    static Json number(double value) {
        if (!Double.isFinite(value)) {
            return Json.Null.NULL;
        }
        // JSON here keeps 1e-300 and above; what is smaller is 0 to every reader
        return new Json.Num(Math.abs(value) < SMALLEST ? BigDecimal.ZERO : Json.Num.rounded(new BigDecimal(value)));
    }

    static Json number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : Json.Null.NULL;
    }

    /** The members {@code value}, {@code lower}, {@code upper}. */
    static Json.Obj limits(Limits limits) {
        return Json.object()
                .with("value", number(limits.estimate()))
                .with("lower", number(limits.lower()))
                .with("upper", number(limits.upper()));
    }
}
