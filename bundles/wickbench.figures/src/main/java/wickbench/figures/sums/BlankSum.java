package wickbench.figures.sums;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.figures.detection.LimitOfBlank;
import wickbench.figures.detection.LimitOfBlank.Parametric;

/** The limit of blank, and with low samples that of detection. */
final class BlankSum {
    /** From so many reagent lots on they are taken together. */
    private static final int POOLED = 4;

    private static final String BLANKS =
            "value\n0.3\n-0.2\n0.1\n0.4\n-0.1\n0\n0.2\n-0.3\n0.5\n0.1\n-0.2\n0\n0.3\n0.1\n-0.1\n"
                    + "0.2\n0\n-0.4\n0.3\n0.1";
    private static final String LOW =
            "value\n1.1\n0.7\n1.3\n0.9\n1.5\n0.8\n1.2\n1\n0.6\n1.4\n1.1\n0.9\n1.3\n1\n0.7\n1.2\n0.8\n1.1\n1.4\n0.9";

    private BlankSum() {}

    /** The results of one lot, and of how many samples they are. */
    private record Lot(String name, double[] values, int samples) {}

    static Sum sum() {
        return Sum.of(
                "blank",
                Topic.DETECTION,
                List.of(
                        Input.table("blanks", "lot", "sample", "value").like(BLANKS),
                        Input.flag("rank"),
                        Input.table("low", "lot", "sample", "value")
                                .named()
                                .optional()
                                .like(LOW)),
                BlankSum::answer);
    }

    private static Answer answer(Given given) {
        boolean rank = given.flag("rank");
        List<Lot> read = lots("blanks", given.cells("blanks"));
        List<Lot> lots = read.size() < POOLED ? read : List.of(pooled(read));
        Lot worst = lots.stream()
                .max(Comparator.comparingDouble(lot -> limit(lot, rank)))
                .orElseThrow();
        double lob = limit(worst, rank);
        Answer answer = Answer.of().with("lob", lob).with("results", worst.values().length);
        answer = rank ? answer : parts(answer, LimitOfBlank.parametric(worst.values(), worst.samples()));
        if (lots.size() > 1) {
            answer = answer.with(
                    "lots", Json.array(lots.stream().map(lot -> line(lot, rank)).toList()));
        }
        Answer blank = answer.inWords("blank.result", Answer.forPeople(lob))
                .by(rank ? "blank.rank" : "blank.parametric")
                .plotted(() -> plot(worst.values(), lob));
        return given.hasTable("low") ? detected(blank, worst, lob, pooled(lots("low", given.cells("low")))) : blank;
    }

    private static Answer detected(Answer blank, Lot worst, double lob, Lot low) {
        Parametric detection = LimitOfBlank.detection(lob, low.values(), low.samples());
        return blank.with(
                        "lod",
                        Json.object()
                                .with("value", Answer.number(detection.limit()))
                                .with("sd", Answer.number(detection.sd()))
                                .with("factor", Answer.number(detection.factor()))
                                .with("uncorrected", Answer.number(detection.plain())))
                .inWords("blank.detected", Answer.forPeople(detection.limit()))
                .by("blank.lod")
                .plotted(() -> plot(worst.values(), lob, low.values(), detection.limit()));
    }

    private static Chart plot(double[] blanks, double lob) {
        return Plots.with(
                Plots.chart(Plots.axis("result"), Plots.axis("value"), points("blanks", blanks)),
                Plots.limit("lob", lob));
    }

    private static Chart plot(double[] blanks, double lob, double[] low, double lod) {
        return Plots.with(
                Plots.chart(Plots.axis("result"), Plots.axis("value"), points("blanks", blanks), points("low", low)),
                Plots.limit("lob", lob),
                Plots.limit("lod", lod));
    }

    private static Series points(String name, double[] values) {
        return Plots.series(name, Series.Mark.POINTS, Plots.counted(values.length, 1), values);
    }

    private static double limit(Lot lot, boolean rank) {
        return rank
                ? LimitOfBlank.byRank(lot.values())
                : LimitOfBlank.parametric(lot.values(), lot.samples()).limit();
    }

    private static Json.Obj line(Lot lot, boolean rank) {
        return Json.object()
                .with("lot", lot.name())
                .with("results", lot.values().length)
                .with("lob", Answer.number(limit(lot, rank)));
    }

    private static Answer parts(Answer answer, Parametric blank) {
        return answer.with("mean", blank.mean())
                .with("sd", blank.sd())
                .with("factor", blank.factor())
                .with("uncorrected", blank.plain());
    }

    private static Lot pooled(List<Lot> lots) {
        double[] all = lots.stream()
                .flatMapToDouble(lot -> Arrays.stream(lot.values()))
                .toArray();
        return new Lot("", all, lots.stream().mapToInt(Lot::samples).sum());
    }

    /** Reads {@code value}, {@code sample,value} or {@code lot,sample,value} a row. */
    private static List<Lot> lots(String input, TableText text) {
        TableReader reader = new TableReader(input, text);
        Map<String, List<Double>> values = new LinkedHashMap<>();
        Map<String, Set<String>> samples = new LinkedHashMap<>();
        int width = text.lines().isEmpty() ? 0 : text.lines().get(0).cells().size();
        for (TableText.Line line : text.body()) {
            List<String> cells = line.cells();
            if (cells.size() != width || width > 3) {
                throw reader.complaint(line, "table.cell-count", cells.size(), Math.min(width, 3));
            }
            String lot = width == 3 ? cells.get(0) : "";
            values.computeIfAbsent(lot, name -> new ArrayList<>()).add(reader.number(line, cells.get(width - 1)));
            samples.computeIfAbsent(lot, name -> new LinkedHashSet<>()).add(width > 1 ? cells.get(width - 2) : "");
        }
        if (values.isEmpty()) {
            throw new Wrong(input, Complaint.of(text.source(), SumWords.get("table.empty")));
        }
        List<Lot> lots = new ArrayList<>();
        values.forEach((name, all) -> lots.add(new Lot(
                name,
                all.stream().mapToDouble(Double::doubleValue).toArray(),
                samples.get(name).size())));
        return lots;
    }
}
