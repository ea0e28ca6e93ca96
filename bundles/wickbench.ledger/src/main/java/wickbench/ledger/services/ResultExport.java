package wickbench.ledger.services;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section;
import wickbench.api.report.WholeFile;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;

/** Lets results leave the house as a file, row by row, so that they may be many. */
record ResultExport(Results results, List<ReportPrinter> printers) {
    private static final int PAGE = 1000;
    private static final Map<String, String> FORMS = Map.of(
            ".csv", ReportPrinter.CSV,
            ".xlsx", ReportPrinter.XLSX,
            ".jsonl", ReportPrinter.JSON_LINES,
            ".pdf", ReportPrinter.PDF);

    void write(Filter filter, ResultCells cells, Path out) {
        String form = form(out);
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(form))
                .findFirst()
                .orElseThrow(() -> new Refusal("ledger.no-printer", LedgerWords.get("export.no-printer", form)));
        // only paper carries the seals of what it draws from
        List<EntryRef> drawnFrom = form.equals(ReportPrinter.PDF) ? refs(filter) : List.of();
        Section.Table table = Section.Table.of(ResultCells.headerWithSignature(), rows(filter, cells::signed));
        Report report = new Report(LedgerWords.get("export.title"), List.of(table), drawnFrom);
        try {
            new WholeFile(out).write(bytes -> {
                printer.print(report, bytes);
                return true;
            });
        } catch (IOException e) {
            throw new BadInput(Complaint.of(out.toString(), LedgerWords.get("export.unwritable", e.getMessage())));
        }
    }

    private static String form(Path out) {
        String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        return FORMS.entrySet().stream()
                .filter(form -> name.endsWith(form.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new BadInput(Complaint.of("--out", LedgerWords.get("export.form", name))));
    }

    private List<EntryRef> refs(Filter filter) {
        List<EntryRef> refs = new ArrayList<>();
        rows(filter, ResultRow::ref).forEach(refs::add);
        return refs;
    }

    private <T> Iterable<T> rows(Filter filter, Function<ResultRow, T> shown) {
        return () -> new Paged<>(filter, shown);
    }

    /** Asks for the next page when the one before is used up. */
    private final class Paged<T> implements Iterator<T> {
        private final Filter filter;
        private final Function<ResultRow, T> shown;
        private final Deque<ResultRow> page = new ArrayDeque<>();
        private Optional<ResultRow> last = Optional.empty();
        private boolean more = true;

        Paged(Filter filter, Function<ResultRow, T> shown) {
            this.filter = filter;
            this.shown = shown;
        }

        @Override
        public boolean hasNext() {
            if (page.isEmpty() && more) {
                ResultPage next = results.page(filter, Sort.NEWEST_FIRST, last, PAGE);
                page.addAll(next.rows());
                more = next.more();
            }
            return !page.isEmpty();
        }

        @Override
        public T next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            last = Optional.of(page.remove());
            return shown.apply(last.get());
        }
    }
}
