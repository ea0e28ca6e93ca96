package wickbench.figures.sums;

import java.util.List;
import java.util.Optional;
import wickbench.figures.Limits;
import wickbench.figures.sampling.Composite;
import wickbench.figures.sampling.Particles;
import wickbench.figures.sampling.PooledShare;

/** Particles, and samples that are tested together. */
final class PoolSums {
    private PoolSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "particles",
                        Topic.SAMPLING,
                        List.of(
                                Input.number("per-kg").like("5"),
                                Input.number("portion").like("25"),
                                Input.number("clumping").optional()),
                        PoolSums::particles),
                Sum.of(
                        "composite",
                        Topic.SAMPLING,
                        List.of(
                                Input.number("share").like("0.02"),
                                Input.whole("composite").like("5"),
                                Input.number("concentration").optional().like("20"),
                                Input.number("limit").optional().like("2.5")),
                        PoolSums::composite),
                Sum.of(
                        "pooled",
                        Topic.SAMPLING,
                        List.of(
                                Input.whole("positive").at("POSITIVE").like("3"),
                                Input.whole("pools").at("POOLS").like("10"),
                                Input.whole("size").at("SIZE").like("5"),
                                Input.level()),
                        PoolSums::pooled));
    }

    private static Answer particles(Given given) {
        Particles particles = new Particles(given.number("per-kg"));
        double grams = given.number("portion");
        Optional<Double> clumping = given.optional("clumping");
        double found = found(particles, clumping, grams);
        return Answer.of()
                .with("chance", found)
                .with("expected", particles.expected(grams))
                .inWords("particles.result", Answer.percent(found), Answer.forPeople(grams))
                .by(clumping.isPresent() ? "particles.clumped" : "particles.poisson")
                .minding("samples.random")
                .plotted(() -> Plots.chart(
                        Plots.axis("portion"),
                        Plots.axis("found"),
                        Plots.curve("found", 0, Math.max(1, 2 * grams), m -> found(particles, clumping, m))));
    }

    private static double found(Particles particles, Optional<Double> clumping, double grams) {
        return clumping.map(k -> particles.foundClumped(grams, k)).orElseGet(() -> particles.found(grams));
    }

    private static Answer composite(Given given) {
        double share = given.number("share");
        Composite pool = new Composite(given.whole("composite"));
        Composite cheapest = Composite.cheapest(share);
        double contains = pool.contains(share);
        Answer answer = Answer.of()
                .with("contains", contains)
                .with("testsPerItem", pool.testsPerItem(share))
                .with("cheapest", cheapest.size())
                .with("cheapestTestsPerItem", cheapest.testsPerItem(share))
                .inWords("composite.result", pool.size(), Answer.percent(contains), cheapest.size())
                .by("composite.formula")
                .minding("samples.random")
                .plotted(() -> Plots.chart(
                        Plots.axis("composite"),
                        Plots.axis("tests-per-item"),
                        Plots.curve(
                                "tests-per-item",
                                1,
                                Math.max(12, 2.0 * Math.max(pool.size(), cheapest.size())),
                                k -> new Composite((int) k).testsPerItem(share))));
        return diluted(given, pool, answer);
    }

    private static Answer diluted(Given given, Composite pool, Answer answer) {
        if (!given.has("concentration") && !given.has("limit")) {
            return answer;
        }
        double concentration = given.number("concentration");
        double limit = given.number("limit");
        int largest = Composite.largest(concentration, limit);
        Answer told = answer.with("diluted", pool.diluted(concentration))
                .with("largest", largest)
                .by("composite.dilution");
        return pool.size() <= largest ? told : told.minding("composite.too-many", pool.size(), largest);
    }

    private static Answer pooled(Given given) {
        long positive = given.count("positive");
        long pools = given.count("pools");
        long size = given.count("size");
        double level = given.number("level");
        Limits share = new PooledShare(positive, pools, size).limits(level);
        return Answer.of(share)
                .inWords(
                        "pooled.result",
                        Answer.percent(share.estimate()),
                        Answer.percent(share.lower()),
                        Answer.percent(share.upper()))
                .by("pooled.formula")
                .minding("samples.random")
                .plotted(() -> Plots.chart(
                        Plots.axis("positive-pools"),
                        Plots.axis("share"),
                        Plots.curve(
                                "estimate",
                                0,
                                pools,
                                x -> of((long) x, pools, size, level).estimate()),
                        Plots.curve(
                                "lower",
                                0,
                                pools,
                                x -> of((long) x, pools, size, level).lower()),
                        Plots.curve(
                                "upper",
                                0,
                                pools,
                                x -> of((long) x, pools, size, level).upper())));
    }

    private static Limits of(long positive, long pools, long size, double level) {
        return new PooledShare(positive, pools, size).limits(level);
    }
}
