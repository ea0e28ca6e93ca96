package wickbench.ledger.services;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.check.Refusal;
import wickbench.api.index.Index;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.profile.SiteFacts;
import wickbench.api.progress.Progress;
import wickbench.ledger.Filter;
import wickbench.ledger.InDoubt;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;
import wickbench.ledger.Statement;
import wickbench.ledger.Unread;
import wickbench.ledger.Week;

/** The results, asked from the index; what stands in full is read from the journal. */
@Component
public final class LedgerResults implements Results {
    private final Index index;
    private final Journal journal;
    private final SiteFacts site;

    @Activate
    public LedgerResults(@Reference Index index, @Reference Journal journal, @Reference SiteFacts site) {
        this.index = index;
        this.journal = journal;
        this.site = site;
    }

    @Override
    public ResultPage page(Filter filter, Sort sort, Optional<ResultRow> after, int size) {
        List<Condition> asked = Condition.of(filter, this::zone);
        List<ResultRow> found = sort.column() == SortColumn.OUTCOME
                ? read(new ByOutcome(asked, sort.ascending(), site.now().outcomeOrder())::rows, after, size + 1)
                : read(new Question(asked, sort)::rows, after, size + 1);
        boolean more = found.size() > size;
        return new ResultPage(more ? found.subList(0, size) : found, more);
    }

    /** Reads rows that follow one. */
    private interface Paging {
        List<ResultRow> rows(Rows rows, Optional<ResultRow> after, int size);
    }

    private List<ResultRow> read(Paging paging, Optional<ResultRow> after, int size) {
        return index.read(LedgerView.NAME, rows -> paging.rows(rows, after, size));
    }

    @Override
    public long count(Filter filter) {
        List<Condition> asked = Condition.of(filter, this::zone);
        Object[] values = asked.stream()
                .map(Condition::values)
                .flatMap(Collection::stream)
                .toArray();
        return index.read(
                LedgerView.NAME,
                rows -> rows.first(
                                "select count(*) as results from statement where " + Question.where(asked),
                                row -> row.whole("results"),
                                values)
                        .orElseThrow());
    }

    @Override
    public List<Week> weekly(Filter filter) {
        Weeks weeks = new Weeks(Condition.of(filter, this::zone), zone());
        return index.read(LedgerView.NAME, weeks::count);
    }

    @Override
    public Optional<ResultDetail> find(UUID entry) {
        return detail("select result from statement where id = ?", entry);
    }

    @Override
    public Optional<ResultDetail> find(EntryRef entry) {
        return detail(
                "select result from statement where station = ? and seq = ?",
                entry.station().value(),
                entry.seq());
    }

    @Override
    public long unreviewedBefore(Instant since) {
        return index.read(LedgerView.NAME, rows -> Before.unreviewed(since, rows));
    }

    @Override
    public Optional<ResultRow> lastGood(ResultRow before) {
        return index.read(LedgerView.NAME, rows -> Before.lastGood(before, rows));
    }

    @Override
    public List<String> batches(String line, Optional<Instant> after, Optional<Instant> until) {
        return index.read(LedgerView.NAME, rows -> Before.batches(line, after, until, rows));
    }

    @Override
    public List<Unread> unread() {
        return index.read(
                LedgerView.NAME,
                rows -> rows.read(
                        "select kind, v, entries from unread order by kind, v",
                        row -> new Unread(row.text("kind"), Math.toIntExact(row.whole("v")), row.whole("entries"))));
    }

    @Override
    public List<String> falsified(Progress progress) {
        return new Soundness(index, journal).against(progress);
    }

    @Override
    public void refuseFalsified(Filter filter) {
        new Soundness(index, journal)
                .refuseOthers(new PagedRows<>(this, filter, Sort.NEWEST_FIRST, row -> row), this::asRecorded);
    }

    /** One that was never corrected stands by one entry, which is quicker to read than all that the index knows of it. */
    private boolean asRecorded(ResultRow row) {
        if (row.corrections() > 0) {
            return find(row.id()).filter(ResultDetail::asRecorded).isPresent();
        }
        return journal.entry(row.ref())
                .flatMap(entry -> Said.of(entry)
                        .map(said -> new ResultDetail(
                                row,
                                said.reading(),
                                List.of(new Statement(entry, said.reason(), said.reading(), true)),
                                List.of())))
                .filter(ResultDetail::asRecorded)
                .isPresent();
    }

    /** A result with the places of its statements, oldest first. */
    private record Found(ResultRow row, EntryRef counts, List<EntryRef> statements, List<InDoubt> doubts) {}

    private Optional<ResultDetail> detail(String sql, Object... values) {
        return index.read(
                        LedgerView.NAME,
                        rows -> rows.first(sql, row -> row.uuid("result"), values)
                                .flatMap(id -> found(rows, id)))
                .map(this::detail);
    }

    private static Optional<Found> found(Rows rows, UUID id) {
        return rows.first(Question.SELECT + "counts and result = ?", Shape::row, id)
                .map(row -> new Found(
                        row,
                        places(rows, "counts and result = ?", id).get(0),
                        places(rows, "result = ?", id),
                        DoubtTables.of(id, rows)));
    }

    private static List<EntryRef> places(Rows rows, String which, UUID id) {
        return rows.read(
                "select station, seq from statement where " + which + " order by recording desc, at, station, seq",
                row -> new EntryRef(new StationId(row.text("station")), row.whole("seq")),
                id);
    }

    private ResultDetail detail(Found found) {
        List<Statement> history = new ArrayList<>();
        for (EntryRef place : found.statements()) {
            Entry entry = journal.entry(place).orElseThrow(() -> unrecorded(place));
            Said said = Said.of(entry).orElseThrow(() -> unrecorded(place));
            history.add(new Statement(entry, said.reason(), said.reading(), place.equals(found.counts())));
        }
        Statement counts =
                history.stream().filter(Statement::counts).findFirst().orElseThrow();
        return new ResultDetail(found.row(), counts.reading(), history, found.doubts());
    }

    private static Refusal unrecorded(EntryRef place) {
        return new Refusal("ledger.unrecorded", LedgerWords.get("unrecorded", place));
    }

    private ZoneId zone() {
        return site.now().zone();
    }
}
