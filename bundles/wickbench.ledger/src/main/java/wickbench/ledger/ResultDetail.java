package wickbench.ledger;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;

/**
 * One result in full.
 *
 * @param row as the index has it
 * @param reading the statement that counts, as it stands in the journal
 * @param history every statement, oldest first, each as it stands in the journal
 * @param doubts what put it in doubt, decided or not, oldest first
 */
public record ResultDetail(ResultRow row, RecordedReading reading, List<Statement> history, List<InDoubt> doubts) {
    public ResultDetail {
        doubts = List.copyOf(doubts);
        history = List.copyOf(history);
    }

    /** Tells whether the index says of this result what the journal says; if not, its file was changed behind the program. */
    public boolean asRecorded() {
        Reading said = reading.reading();
        return said(row).equals(said(said.sample()))
                && row.route() == said.route()
                && row.method().equals(reading.method().ref())
                && row.target().equals(reading.method().target().name())
                && row.lot().equals(said.lot())
                && row.operator().equals(said.operator())
                && row.started().equals(kept(said.times().started()))
                && row.read().equals(kept(said.times().read()))
                && row.dilution().compareTo(said.sample().dilution()) == 0
                && judgedAsRecorded()
                && placedAsRecorded();
    }

    private boolean judgedAsRecorded() {
        return row.outcome() == reading.verdict().outcome()
                && row.sign() == reading.verdict().sign()
                && row.findings() == reading.verdict().findings().size();
    }

    private boolean placedAsRecorded() {
        return row.corrections() == history.size() - 1
                && row.held() == held()
                && history.stream()
                        .map(Statement::entry)
                        .anyMatch(entry -> entry.ref().equals(row.ref())
                                && entry.id().equals(row.id())
                                && entry.by().equals(row.recordedBy()));
    }

    /** Tells whether the result is held, as the journal says, whatever the list says of it. */
    public boolean held() {
        return reading.reading().sample().control().isEmpty()
                && history.stream().anyMatch(each -> each.reading().verdict().holds());
    }

    /** The index keeps times to the millisecond. */
    private static Optional<Instant> kept(Optional<Instant> time) {
        return time.map(at -> at.truncatedTo(ChronoUnit.MILLIS));
    }

    private static List<Object> said(ResultRow row) {
        return List.of(row.sample(), row.place(), row.line(), row.batch(), row.reason(), row.control());
    }

    private static List<Object> said(Sample sample) {
        return List.of(sample.code(), sample.place(), sample.line(), sample.batch(), sample.reason(), sample.control());
    }
}
