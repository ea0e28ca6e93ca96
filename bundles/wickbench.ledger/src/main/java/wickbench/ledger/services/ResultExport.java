package wickbench.ledger.services;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;

/** Lets results leave the house as a file, row by row, so that they may be many. */
record ResultExport(Results results, List<ReportPrinter> printers) {
    void write(Filter filter, ResultCells cells, Path out) {
        results.refuseFalsified(filter);
        // only paper carries the seals of what it draws from
        List<EntryRef> drawnFrom = Printing.form(out).equals(ReportPrinter.PDF) ? refs(filter) : List.of();
        Section.Table table = Section.Table.of(
                ResultCells.headerWithSignature(), new PagedRows<>(results, filter, Sort.NEWEST_FIRST, cells::signed));
        Report report = new Report(LedgerWords.get("export.title"), List.of(table), drawnFrom);
        new Printing(printers).print(report, out);
    }

    private List<EntryRef> refs(Filter filter) {
        List<EntryRef> refs = new ArrayList<>();
        new PagedRows<>(results, filter, Sort.NEWEST_FIRST, ResultRow::ref).forEach(refs::add);
        return refs;
    }
}
