package wickbench.figures.sums;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import wickbench.api.chart.Chart;
import wickbench.api.json.Json;
import wickbench.api.words.Decimals;
import wickbench.figures.Limits;

/**
 * What a sum answers.
 *
 * @param figures the members, in the order people read them
 * @param remarks the answer in words, the formula with its source, what the answer does not say
 * @param plot draws it, where there is something to draw; worked out when it is asked for
 */
public record Answer(Json.Obj figures, List<Remark> remarks, Optional<Supplier<Chart>> plot) {
    /** People read six digits; machines get them all. */
    private static final MathContext FOR_PEOPLE = new MathContext(6);

    private static final MathContext IN_SENTENCES = new MathContext(3);

    private static final double SMALLEST = 1e-300;

    public Answer {
        remarks = List.copyOf(remarks);
    }

    static Answer of() {
        return new Answer(Json.object(), List.of(), Optional.empty());
    }

    static Answer of(Limits limits) {
        return of().with("estimate", limits.estimate())
                .with("lower", limits.lower())
                .with("upper", limits.upper());
    }

    /** Returns the remarks of one kind. */
    public List<String> said(Remark.Kind kind) {
        return remarks.stream()
                .filter(remark -> remark.kind() == kind)
                .map(Remark::text)
                .toList();
    }

    Answer with(String name, Json value) {
        return new Answer(figures.with(name, value), remarks, plot);
    }

    Answer with(String name, double value) {
        return with(name, number(value));
    }

    Answer with(String name, long value) {
        return with(name, new Json.Num(BigDecimal.valueOf(value)));
    }

    Answer with(String name, BigDecimal value) {
        return with(name, new Json.Num(Json.Num.rounded(value)));
    }

    Answer with(String name, String value) {
        return with(name, new Json.Text(value));
    }

    Answer with(String name, double[] values) {
        return with(
                name, Json.array(Arrays.stream(values).mapToObj(Answer::number).toList()));
    }

    /** Adds an estimate as an object of {@code value}, {@code lower}, {@code upper}. */
    Answer withLimits(String name, Limits limits) {
        return with(name, limits(limits));
    }

    /** Says the answer in words. */
    Answer inWords(String key, Object... values) {
        return saying(Remark.Kind.RESULT, key, values);
    }

    /** Names a formula and its source. */
    Answer by(String key, Object... values) {
        return saying(Remark.Kind.FORMULA, key, values);
    }

    /** Says what the answer does not say. */
    Answer minding(String key, Object... values) {
        return saying(Remark.Kind.CAUTION, key, values);
    }

    private Answer saying(Remark.Kind kind, String key, Object... values) {
        List<Remark> more = new ArrayList<>(remarks);
        more.add(new Remark(kind, SumWords.get(key, values)));
        return new Answer(figures, more, plot);
    }

    Answer plotted(Supplier<Chart> chart) {
        return new Answer(figures, remarks, Optional.of(chart));
    }

    /** Writes a number as people read it: with six digits; a whole number is a count and keeps all of them. */
    public static String forPeople(BigDecimal value) {
        return value.stripTrailingZeros().scale() <= 0
                ? value.toBigInteger().toString()
                : Decimals.signed(value.round(FOR_PEOPLE).stripTrailingZeros().toString());
    }

    static String forPeople(double value) {
        return Decimals.of(new BigDecimal(value).round(FOR_PEOPLE).stripTrailingZeros());
    }

    /** Writes what was estimated from a few tests as a sentence tells it: more than three digits would claim too much. */
    static String estimate(double value) {
        return Decimals.of(new BigDecimal(value).round(IN_SENTENCES).stripTrailingZeros());
    }

    /** Writes a share of 1 as people read it, in per cent with three digits. */
    static String percent(double share) {
        return Decimals.of(new BigDecimal(share)
                        .movePointRight(2)
                        .round(IN_SENTENCES)
                        .stripTrailingZeros())
                + " %";
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
