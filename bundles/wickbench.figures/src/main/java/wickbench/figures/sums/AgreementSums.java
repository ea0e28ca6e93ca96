package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.json.Json;
import wickbench.figures.agreement.AttributeStudy;
import wickbench.figures.agreement.AttributeStudy.Judgement;
import wickbench.figures.agreement.Diagnostic;
import wickbench.figures.agreement.Kappa;
import wickbench.figures.agreement.ManyReaders;
import wickbench.figures.agreement.TwoReaders;
import wickbench.figures.agreement.Weights;

/** Whether readers agree, with one another and with what is so. */
final class AgreementSums {
    private static final List<String> JUDGED = List.of("item", "reader", "reading", "reference");

    private AgreementSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "agreement",
                        Topic.AGREEMENT,
                        List.of(
                                Input.table("answers").like("88,14,18\n10,40,10\n2,6,12"),
                                Input.choice("weights", List.of("none", "linear", "quadratic", "own"))
                                        .usual("none"),
                                Input.table("own-weights").named().only("weights", "own"),
                                Input.level()),
                        AgreementSums::agreement),
                Sum.of(
                        "raters",
                        Topic.AGREEMENT,
                        List.of(Input.table("counts")
                                .like("no,unsure,yes\n6,0,0\n5,1,0\n0,2,4\n0,0,6\n1,0,5\n6,0,0\n0,1,5\n0,0,6")),
                        AgreementSums::raters),
                Sum.of(
                        "attributes",
                        Topic.AGREEMENT,
                        List.of(
                                Input.table("judgements", JUDGED.toArray(String[]::new))
                                        .like(
                                                "item,reader,reading,reference\n1,A,1,1\n1,A,1,1\n1,B,1,1\n1,B,0,1\n2,A,0,0\n"
                                                        + "2,A,0,0\n2,B,0,0\n2,B,0,0\n3,A,1,1\n3,A,1,1\n3,B,1,1\n3,B,1,1\n4,A,1,0\n4,A,0,0\n"
                                                        + "4,B,0,0\n4,B,0,0"),
                                Input.level()),
                        AgreementSums::attributes),
                Sum.of(
                        "diagnostic",
                        Topic.AGREEMENT,
                        List.of(
                                Input.whole("TP").at("TP").like("90"),
                                Input.whole("FN").at("FN").like("10"),
                                Input.whole("FP").at("FP").like("5"),
                                Input.whole("TN").at("TN").like("95"),
                                Input.number("prevalence").optional().like("0.02"),
                                Input.level()),
                        AgreementSums::diagnostic));
    }

    private static Answer agreement(Given given) {
        Table table = given.table("answers");
        long[][] counts = table.counts("count");
        Kappa kappa = TwoReaders.of(counts).kappa(weights(given, counts.length), given.number("level"));
        double found = kappa.kappa().estimate();
        return Answer.of()
                .with("po", kappa.observed())
                .with("pe", kappa.expected())
                .with("kappa", found)
                .with("lower", kappa.kappa().lower())
                .with("upper", kappa.kappa().upper())
                .with("cohen", errors(kappa.cohenSe(), kappa.cohenSe0(), found))
                .with("fleiss", errors(kappa.fleissSe(), kappa.fleissSe0(), found))
                .with("z", kappa.z())
                .with("p", kappa.p())
                .with("scott", kappa.scott())
                .with("ac1", kappa.ac1())
                .inWords(
                        "agreement.result",
                        Answer.percent(kappa.observed()),
                        Answer.forPeople(found),
                        Answer.forPeople(kappa.kappa().lower()),
                        Answer.forPeople(kappa.kappa().upper()))
                .by("agreement.kappa")
                .by("agreement.errors")
                .by("agreement.others")
                .plotted(() -> margins(counts));
    }

    private static Json errors(double se, double se0, double kappa) {
        return Json.object()
                .with("se", Answer.number(se))
                .with("se0", Answer.number(se0))
                .with("z", Answer.number(kappa / se0));
    }

    private static Weights weights(Given given, int categories) {
        return switch (given.text("weights").orElse("none")) {
            case "linear" -> Weights.linear(categories);
            case "quadratic" -> Weights.quadratic(categories);
            case "own" -> {
                Table own = given.table("own-weights");
                yield own.told(() -> Weights.of(own.cells()));
            }
            default -> Weights.none(categories);
        };
    }

    /** How often each answer was given by either reader. */
    private static Chart margins(long[][] counts) {
        double all = Arrays.stream(counts).flatMapToLong(Arrays::stream).sum();
        double[] rows = Arrays.stream(counts)
                .mapToDouble(row -> Arrays.stream(row).sum() / all)
                .toArray();
        double[] columns = IntStream.range(0, counts.length)
                .mapToDouble(column ->
                        Arrays.stream(counts).mapToLong(row -> row[column]).sum() / all)
                .toArray();
        return Plots.chart(
                Plots.places("category", numbered(counts.length)),
                Plots.axis("share"),
                Plots.inOrder("rows", Series.Mark.BARS, rows),
                Plots.inOrder("columns", Series.Mark.BARS, columns));
    }

    private static List<String> numbered(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
    }

    private static Answer raters(Given given) {
        Table table = given.table("counts");
        ManyReaders readers = ManyReaders.of(table.counts("count"));
        return Answer.of()
                .with("po", readers.observed())
                .with("pe", readers.expected())
                .with("kappa", readers.kappa())
                .with("se0", readers.se0())
                .with("z", readers.z())
                .with("p", readers.p())
                .with("freeMarginal", readers.freeMarginal())
                .with("ac1", readers.ac1())
                .with(
                        "categories",
                        Json.array(readers.categories().stream()
                                .map(each -> Json.object()
                                        .with("share", Answer.number(each.share()))
                                        .with("kappa", Answer.number(each.kappa())))
                                .toList()))
                .inWords("raters.result", Answer.percent(readers.observed()), Answer.forPeople(readers.kappa()))
                .by("raters.fleiss")
                .by("raters.others")
                .plotted(() -> Plots.chart(
                        Plots.places("category", numbered(readers.categories().size())),
                        Plots.axis("kappa"),
                        Plots.inOrder(
                                "kappa",
                                Series.Mark.BARS,
                                readers.categories().stream()
                                        .mapToDouble(each -> each.kappa().orElse(Double.NaN))
                                        .toArray())));
    }

    private static Answer attributes(Given given) {
        List<Judgement> judgements =
                new JudgementReader(new TableReader("judgements", given.cells("judgements")), JUDGED).all();
        AttributeStudy study = AttributeStudy.of(judgements, given.number("level"));
        return Answer.of()
                .withLimits("system", study.system())
                .with(
                        "readers",
                        Json.array(study.readers().entrySet().stream()
                                .map(each -> row(each.getKey(), each.getValue()))
                                .toList()))
                .inWords(
                        "attributes.result",
                        study.readers().size(),
                        Answer.percent(study.system().estimate()))
                .by("attributes.formula")
                .plotted(() -> Plots.limits(
                        "effectiveness",
                        List.copyOf(study.readers().keySet()),
                        study.readers().values().stream()
                                .map(AttributeStudy.Reader::effectiveness)
                                .toList()));
    }

    private static Json.Obj row(String name, AttributeStudy.Reader reader) {
        return Json.object()
                .with("reader", name)
                .with("effectiveness", Answer.number(reader.effectiveness().estimate()))
                .with("lower", Answer.number(reader.effectiveness().lower()))
                .with("upper", Answer.number(reader.effectiveness().upper()))
                .with("consistency", Answer.number(reader.consistency().estimate()))
                .with("misses", Answer.number(reader.misses()))
                .with("falseAlarms", Answer.number(reader.falseAlarms()));
    }

    private static Answer diagnostic(Given given) {
        long tp = given.count("TP");
        long fn = given.count("FN");
        long fp = given.count("FP");
        long tn = given.count("TN");
        Diagnostic of = Diagnostic.of(tp, fn, fp, tn, given.number("level"));
        double se = of.sensitivity().estimate();
        double sp = of.specificity().estimate();
        double share = given.optional("prevalence").orElse((double) (tp + fn) / (tp + fn + fp + tn));
        Answer answer = Answer.of()
                .withLimits("sensitivity", of.sensitivity())
                .withLimits("specificity", of.specificity())
                .with("youden", of.youden())
                .with("youdenSe", of.youdenSe())
                .with("positiveLikelihoodRatio", Answer.number(of.positiveRatio()))
                .with("negativeLikelihoodRatio", Answer.number(of.negativeRatio()))
                .with("oddsRatio", Answer.number(of.oddsRatio()))
                .with("prevalence", share)
                .with("positivePredictiveValue", Answer.number(Diagnostic.positiveValue(se, sp, share)))
                .with("negativePredictiveValue", Answer.number(Diagnostic.negativeValue(se, sp, share)))
                .inWords("diagnostic.result", Answer.percent(se), Answer.percent(sp))
                .by("diagnostic.formula")
                .by("diagnostic.bayes")
                .plotted(() -> Plots.chart(
                        Plots.axis("prevalence"),
                        Plots.axis("predictive"),
                        Plots.curve(
                                "positive-value",
                                0,
                                1,
                                p -> Diagnostic.positiveValue(se, sp, p).orElse(Double.NaN)),
                        Plots.curve(
                                "negative-value",
                                0,
                                1,
                                p -> Diagnostic.negativeValue(se, sp, p).orElse(Double.NaN))));
        return given.has("prevalence") ? answer : answer.minding("diagnostic.own-prevalence");
    }
}
