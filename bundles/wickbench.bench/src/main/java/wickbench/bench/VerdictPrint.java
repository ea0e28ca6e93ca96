package wickbench.bench;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.reading.Finding;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Severity;
import wickbench.reading.FindingWords;
import wickbench.reading.OutcomeWords;
import wickbench.reading.VerdictJson;

/** Prints judged readings, for people as a table with reasons below, for machines as an array. */
final class VerdictPrint {
    private VerdictPrint() {}

    static void print(List<RecordedReading> judged, Terminal terminal) {
        if (terminal.json()) {
            terminal.json(Json.array(judged.stream().map(VerdictPrint::report).toList()));
            return;
        }
        terminal.table(header(), judged.stream().map(VerdictPrint::row).toList());
        reasons(judged, terminal);
        terminal.line("");
        terminal.line(BenchWords.get("print.caution"));
    }

    static void printKept(List<Kept> kept, Terminal terminal) {
        if (terminal.json()) {
            terminal.json(Json.array(kept.stream().map(VerdictPrint::keptReport).toList()));
        } else {
            print(kept.stream().map(Kept::reading).toList(), terminal);
        }
        long added = kept.stream().filter(Kept::added).count();
        // machine output stays one value; what was added is told beside it
        terminal.note(BenchWords.get("print.added", added, kept.size() - added));
    }

    private static Json.Obj report(RecordedReading judged) {
        return VerdictJson.report(judged.reading().sample().code(), judged.verdict());
    }

    private static Json.Obj keptReport(Kept kept) {
        return report(kept.reading())
                .with("id", kept.id().toString())
                .with("entry", kept.ref().toString())
                .with("added", kept.added());
    }

    private static List<String> header() {
        return List.of(
                BenchWords.get("print.sample"),
                BenchWords.get("print.place"),
                BenchWords.get("print.method"),
                BenchWords.get("print.outcome"),
                BenchWords.get("print.level"),
                BenchWords.get("print.reasons"));
    }

    private static List<String> row(RecordedReading judged) {
        return List.of(
                judged.reading().sample().code(),
                judged.reading().sample().place(),
                judged.method().ref().toString(),
                OutcomeWords.text(
                        judged.verdict().outcome(), judged.reading().sample().dilution()),
                judged.verdict().level().map(OutcomeWords::level).orElse(""),
                judged.verdict().findings().stream()
                        .filter(finding -> finding.severity() != Severity.CAUTION)
                        .map(Finding::rule)
                        .collect(Collectors.joining(" ")));
    }

    /** Tells each reason once, with the samples that it concerns. */
    private static void reasons(List<RecordedReading> judged, Terminal terminal) {
        Map<String, Set<String>> samples = new LinkedHashMap<>();
        for (RecordedReading one : judged) {
            for (Finding finding : one.verdict().findings()) {
                samples.computeIfAbsent(FindingWords.text(finding), text -> new LinkedHashSet<>())
                        .add(one.reading().sample().code());
            }
        }
        long all = judged.stream()
                .map(one -> one.reading().sample().code())
                .distinct()
                .count();
        if (!samples.isEmpty()) {
            terminal.line("");
        }
        samples.forEach((text, whose) -> terminal.line(
                (whose.size() == all ? BenchWords.get("print.all") : String.join(", ", whose)) + ": " + text));
    }
}
