package wickbench.figures.ui;

import static wickbench.figures.ui.Sum.input;

import java.util.List;
import java.util.Optional;
import wickbench.figures.NoAnswer;
import wickbench.figures.sampling.NothingFound;
import wickbench.figures.sampling.OutgoingLimit;
import wickbench.figures.sampling.Particles;
import wickbench.figures.sampling.Plan;
import wickbench.figures.sampling.ReaderRound;
import wickbench.figures.sampling.SampleSize;
import wickbench.figures.sampling.ZeroFailure;

/** How many samples, and what a plan lets pass. */
final class SamplingSums {
    private SamplingSums() {}

    static List<Sum> all() {
        return List.of(
                new Sum(
                        "samples",
                        List.of(
                                input("prevalence", "0.05"),
                                input("confidence", "0.95"),
                                input("sensitivity", "1"),
                                input("lot", "")),
                        SamplingSums::samples),
                new Sum(
                        "acceptance",
                        List.of(input("n", "52"), input("accept", "3"), input("lot", "")),
                        SamplingSums::acceptance),
                new Sum(
                        "round",
                        List.of(input("n", "20"), input("accept", "1"), input("skill", "0.95")),
                        SamplingSums::round),
                new Sum(
                        "particles",
                        List.of(input("per-kg", "5"), input("portion", "25"), input("clumping", "")),
                        SamplingSums::particles),
                new Sum("nothing", List.of(input("n", "20"), input("confidence", "0.95")), SamplingSums::nothing));
    }

    private static Answer samples(Given given) {
        ZeroFailure search =
                new ZeroFailure(given.number("prevalence"), given.number("confidence"), given.number("sensitivity"));
        SampleSize.Enough enough = given.optionalWhole("lot")
                .map(items -> enough(search.lot(items)))
                .orElseGet(search::anyLot);
        Answer answer = Answer.of("figure.n", enough.n()).with("figure.reached", enough.reached());
        return given.optionalWhole("lot").isPresent()
                ? answer
                : answer.plot("axis.n", "axis.reached", 0, 1.5 * enough.n(), search::found);
    }

    private static SampleSize.Enough enough(SampleSize size) {
        if (size instanceof SampleSize.Enough enough) {
            return enough;
        }
        double best = ((SampleSize.NoneIsEnough) size).best();
        throw NoAnswer.of("sensitivity", "samples.none-enough", new Answer.Figure("", best).text());
    }

    private static Answer acceptance(Given given) {
        Plan plan = new Plan(given.whole("n"), given.whole("accept"));
        Optional<Integer> lot = given.optionalWhole("lot");
        OutgoingLimit limit = lot.map(plan::outgoingLimit).orElseGet(plan::outgoingLimit);
        double p10 = plan.shareAccepted(0.1);
        return Answer.of("figure.p95", plan.shareAccepted(0.95))
                .with("figure.p50", plan.shareAccepted(0.5))
                .with("figure.p10", p10)
                .with("figure.aoql", limit.share())
                .plot("axis.share", "axis.acceptance", 0, Math.min(1, 1.5 * p10), plan::acceptance);
    }

    private static Answer round(Given given) {
        ReaderRound round = new ReaderRound(given.whole("n"), given.whole("accept"));
        return Answer.of("figure.passes", round.passes(given.number("skill")))
                .plot("axis.skill", "axis.passes", 0.5, 1, round::passes);
    }

    private static Answer particles(Given given) {
        Particles particles = new Particles(given.number("per-kg"));
        double portion = given.number("portion");
        Optional<Double> clumping = given.optional("clumping");
        double found = found(particles, clumping, portion);
        return Answer.of("figure.found", found)
                .with("figure.expected", particles.expected(portion))
                .plot("axis.portion", "axis.found", 0, Math.max(1, 2 * portion), m -> found(particles, clumping, m));
    }

    private static double found(Particles particles, Optional<Double> clumping, double grams) {
        return clumping.map(k -> particles.foundClumped(grams, k)).orElseGet(() -> particles.found(grams));
    }

    private static Answer nothing(Given given) {
        NothingFound none = new NothingFound(given.whole("n"));
        return Answer.of("figure.largest", none.largestShare(given.number("confidence")))
                .with("figure.three", none.ruleOfThree());
    }
}
