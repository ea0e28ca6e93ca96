package wickbench.figures.sums;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.figures.NoAnswer;
import wickbench.figures.sampling.NothingFound;
import wickbench.figures.sampling.OutgoingLimit;
import wickbench.figures.sampling.Plan;
import wickbench.figures.sampling.ReaderRound;
import wickbench.figures.sampling.SampleSize;
import wickbench.figures.sampling.ZeroFailure;

/** How many samples, and what a plan lets pass. */
final class SamplingSums {
    private SamplingSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "samples",
                        Topic.SAMPLING,
                        List.of(
                                Input.number("prevalence").like("0.05"),
                                Input.number("confidence").like("0.95"),
                                Input.number("sensitivity").usual("1"),
                                Input.whole("lot").optional()),
                        SamplingSums::samples),
                Sum.of(
                        "nothing",
                        Topic.SAMPLING,
                        List.of(
                                Input.whole("n").like("20"),
                                Input.number("confidence").usual("0.95")),
                        SamplingSums::nothing),
                Sum.of(
                        "acceptance",
                        Topic.SAMPLING,
                        List.of(
                                Input.whole("n").like("52"),
                                Input.whole("accept").like("3"),
                                Input.whole("lot").optional(),
                                Input.numbers("at").usual("0.01,0.02,0.05,0.1"),
                                Input.numbers("skill").optional()),
                        SamplingSums::acceptance));
    }

    private static Answer samples(Given given) {
        ZeroFailure search =
                new ZeroFailure(given.number("prevalence"), given.number("confidence"), given.number("sensitivity"));
        return given.has("lot") ? ofLot(search, given.whole("lot")) : ofAnyLot(search);
    }

    private static Answer ofAnyLot(ZeroFailure search) {
        SampleSize.Enough enough = search.anyLot();
        return of(search, enough)
                .with("largestShare", new NothingFound(enough.n()).largestShare(search.confidence()))
                .by("samples.large")
                .minding("samples.random")
                .plotted(() -> Plots.with(
                        Plots.chart(
                                Plots.axis("n"),
                                Plots.axis("found"),
                                Plots.curve("found", 0, 1.5 * enough.n(), search::found)),
                        Plots.limit("confidence", search.confidence())));
    }

    private static Answer ofLot(ZeroFailure search, int items) {
        SampleSize size = search.lot(items);
        if (size instanceof SampleSize.NoneIsEnough none) {
            throw NoAnswer.of("sensitivity", "samples.none-enough", Answer.forPeople(none.best()));
        }
        return of(search, (SampleSize.Enough) size)
                .with("faulty", search.faulty(items))
                .by(search.sensitivity() == 1 ? "samples.lot" : "samples.lot-imperfect")
                .minding("samples.random");
    }

    private static Answer of(ZeroFailure search, SampleSize.Enough enough) {
        return Answer.of()
                .with("n", enough.n())
                .with("reached", enough.reached())
                .inWords(
                        "samples.result",
                        enough.n(),
                        Answer.percent(search.confidence()),
                        Answer.percent(search.prevalence()));
    }

    private static Answer nothing(Given given) {
        int n = given.whole("n");
        double confidence = given.number("confidence");
        double share = new NothingFound(n).largestShare(confidence);
        return Answer.of()
                .with("largestShare", share)
                .with("ruleOfThree", new NothingFound(n).ruleOfThree())
                .inWords("nothing.result", n, Answer.percent(share), Answer.percent(confidence))
                .by("nothing.formula")
                .minding("samples.random")
                .plotted(() -> Plots.chart(
                        Plots.axis("n"),
                        Plots.axis("share"),
                        Plots.curve(
                                "largest",
                                1,
                                Math.max(10, 2.0 * n),
                                at -> new NothingFound((int) at).largestShare(confidence))));
    }

    private static Answer acceptance(Given given) {
        Plan plan = new Plan(given.whole("n"), given.whole("accept"));
        Optional<Integer> lot = given.optionalWhole("lot");
        OutgoingLimit limit = lot.map(plan::outgoingLimit).orElseGet(plan::outgoingLimit);
        double p10 = plan.shareAccepted(0.1);
        double p95 = plan.shareAccepted(0.95);
        Answer answer = Answer.of()
                .with("p95", p95)
                .with("p50", plan.shareAccepted(0.5))
                .with("p10", p10)
                .with("aoql", limit.share())
                .with("aoqlAt", limit.at())
                .with("acceptance", curve(plan, given.numbers("at"), lot));
        return (given.has("skill") ? answer.with("readers", readers(plan, given.numbers("skill"))) : answer)
                .inWords("acceptance.result", Answer.percent(p95), Answer.percent(p10))
                .by("acceptance.formula")
                .by(lot.isPresent() ? "acceptance.lot" : "acceptance.large")
                .minding("samples.random")
                .plotted(() -> Plots.chart(
                        Plots.axis("faulty"),
                        Plots.axis("passes"),
                        Plots.curve("passes", 0, Math.min(1, 1.5 * p10), plan::acceptance)));
    }

    private static Json curve(Plan plan, double[] shares, Optional<Integer> lot) {
        List<Json> points = new ArrayList<>();
        for (double p : shares) {
            Json.Obj point =
                    Json.object().with("p", Answer.number(p)).with("chance", Answer.number(plan.acceptance(p)));
            points.add(lot.map(items -> ofLot(point, plan, p, items))
                    .orElseGet(() -> point.with("outgoing", Answer.number(plan.outgoing(p)))));
        }
        return Json.array(points);
    }

    private static Json.Obj ofLot(Json.Obj point, Plan plan, double p, int items) {
        return point.with("chanceOfLot", Answer.number(plan.acceptanceOfLot(items, faulty(p, items))))
                .with("outgoing", Answer.number(plan.outgoing(p, items)))
                .with("inspected", Answer.number(plan.inspected(p, items)));
    }

    /** Half an item is none; the nearest whole number of faulty items stands for the share. */
    private static int faulty(double p, int items) {
        return BigDecimal.valueOf(p)
                .multiply(BigDecimal.valueOf(items))
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    private static Json readers(Plan plan, double[] skills) {
        ReaderRound round = new ReaderRound(plan.n(), plan.accept());
        return Json.array(Arrays.stream(skills)
                .mapToObj(skill -> Json.object()
                        .with("skill", Answer.number(skill))
                        .with("passes", Answer.number(round.passes(skill))))
                .toList());
    }
}
