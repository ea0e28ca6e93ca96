package wickbench.ledger.pack;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.ledger.Filter;
import wickbench.ledger.papers.Papers;

/** The report of what is packed, for people and for machines, in each form that can be printed here. */
record PackReports(Papers papers, List<ReportPrinter> printers) {
    private static final Map<String, String> FORMS = new TreeMap<>(
            Map.of("pdf", ReportPrinter.PDF, "xlsx", ReportPrinter.XLSX, "jsonl", ReportPrinter.JSON_LINES));

    List<String> add(PackFiles files, Filter filter) throws IOException {
        Report report = papers.results(filter);
        List<String> names = new ArrayList<>();
        for (Map.Entry<String, String> form : FORMS.entrySet()) {
            for (ReportPrinter printer : printers) {
                if (printer.mediaType().equals(form.getValue())) {
                    String name = "results." + form.getKey();
                    files.add("reports/" + name, out -> printer.print(report, out));
                    names.add(name);
                }
            }
        }
        return names;
    }
}
