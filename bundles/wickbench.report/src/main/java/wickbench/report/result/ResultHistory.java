package wickbench.report.result;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Section;
import wickbench.reading.OutcomeWords;
import wickbench.report.ReportWords;
import wickbench.report.text.SiteClock;

/** What became of a result: every act on it with its signature, and the seal of the first. */
record ResultHistory(ResultFile file, SiteClock clock, Names names) {
    Section acts() {
        Stream<List<String>> statements =
                file.statements().stream().map(statement -> act(statement.entry(), outcome(statement)));
        Stream<List<String>> others = file.others().stream().map(entry -> act(entry, ""));
        return Section.Table.of(
                words("table.written", "table.entry", "table.act", "table.by", "table.what"),
                Stream.concat(statements, others).toList());
    }

    private static String outcome(Statement statement) {
        String outcome = OutcomeWords.text(
                statement.reading().verdict().outcome(),
                statement.reading().reading().sample().dilution());
        return statement.reason().map(reason -> outcome + " — " + reason).orElse(outcome);
    }

    private List<String> act(Entry entry, String what) {
        String signed = Stream.concat(Stream.of(what), new SignatureLine(clock, names).under(entry).stream())
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("\n"));
        return List.of(clock.seconds(entry.at()), entry.ref().toString(), entry.kind(), names.of(entry.by()), signed);
    }

    /** Tells how the first statement is sealed. */
    Section seal() {
        Entry entry = file.first().entry();
        return new FactList()
                .add("entry", entry.ref())
                .add("id", entry.id())
                .add("written", entry.at())
                .add("leaf", entry.leaf())
                .add("prev", entry.prev())
                .facts();
    }

    List<EntryRef> drawnFrom() {
        return Stream.concat(file.statements().stream().map(Statement::entry), file.others().stream())
                .map(Entry::ref)
                .toList();
    }

    private static List<String> words(String... keys) {
        return Stream.of(keys).map(ReportWords::get).toList();
    }
}
