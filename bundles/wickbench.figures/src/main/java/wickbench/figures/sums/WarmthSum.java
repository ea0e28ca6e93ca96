package wickbench.figures.sums;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.figures.store.Ageing;
import wickbench.figures.store.Spell;
import wickbench.figures.store.Trace;
import wickbench.figures.store.Warmth;

/** The mean kinetic temperature of a store. */
final class WarmthSum {
    private WarmthSum() {}

    static Sum sum() {
        return Sum.of(
                "warmth",
                Topic.STORE,
                List.of(
                        Input.table("temperatures", "hours", "celsius").like("hours,celsius\n10,5\n12,6\n2,25\n24,5"),
                        Input.number("heat").usual("83.144"),
                        Input.number("gap").optional(),
                        Input.number("low").optional().like("2"),
                        Input.number("high").optional().like("8")),
                WarmthSum::answer);
    }

    private static Answer answer(Given given) {
        TraceTable table = TraceTable.of(given.cells("temperatures"));
        Trace trace = table.trace(given.optional("gap"));
        Warmth warmth = Warmth.of(trace.spells(), new Ageing(given.number("heat")));
        Answer answer = Answer.of()
                .with("kinetic", warmth.kinetic())
                .with("mean", warmth.mean())
                .with("lowest", warmth.lowest())
                .with("highest", warmth.highest())
                .with("hours", warmth.hours())
                .with("gaps", trace.gaps())
                .with("uncoveredHours", trace.uncovered())
                .with("longestGapHours", trace.longestGap())
                .inWords(
                        "warmth.result",
                        Answer.forPeople(warmth.hours()),
                        Answer.forPeople(warmth.kinetic()),
                        Answer.forPeople(warmth.mean()))
                .by("warmth.formula")
                .minding("warmth.screening")
                .plotted(() -> plot(trace.spells(), warmth));
        return told(outside(given, answer, trace), table, trace);
    }

    private static Answer outside(Given given, Answer answer, Trace trace) {
        Answer colder = given.has("low")
                ? answer.with("hoursBelow", Warmth.hoursBelow(trace.spells(), given.number("low")))
                : answer;
        return given.has("high")
                ? colder.with("hoursAbove", Warmth.hoursAbove(trace.spells(), given.number("high")))
                : colder;
    }

    private static Answer told(Answer answer, TraceTable table, Trace trace) {
        Answer gaps = trace.gaps() == 0 ? answer : answer.minding("warmth.gaps", trace.gaps());
        return table.withoutOffset() ? gaps.minding("warmth.no-offset") : gaps;
    }

    private static Chart plot(List<Spell> spells, Warmth warmth) {
        List<Double> at = new ArrayList<>();
        List<Double> celsius = new ArrayList<>();
        double hours = 0;
        for (Spell spell : spells) {
            at.add(hours);
            celsius.add(spell.celsius());
            hours += spell.hours();
        }
        at.add(hours);
        celsius.add(spells.get(spells.size() - 1).celsius());
        return Plots.with(
                Plots.chart(
                        Plots.axis("hours"),
                        Plots.axis("celsius"),
                        Plots.series("celsius", Series.Mark.STEPS, doubles(at), doubles(celsius))),
                Plots.limit("kinetic", warmth.kinetic()));
    }

    private static double[] doubles(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
