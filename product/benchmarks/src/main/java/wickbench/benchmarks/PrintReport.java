package wickbench.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.report.pdf.PdfPrinter;

/** A table as a file for others: ours from the same table as an office suite that is started for it. */
final class PrintReport implements Contest {
    private final Form form;
    private final int rows;
    private final boolean warm;

    /** What is made, and how many times as fast it is to be. */
    private enum Form {
        PDF_COLD("PDF with a chart, fresh process", "pdf", "pdf", "256m", 3),
        PDF_WARM("PDF with a chart, program running", "pdf", "pdf", "256m", 10),
        XLSX("XLSX, fresh process with 64 MB heap", "xlsx", "xlsx", "64m", 4),
        CSV("CSV, fresh process with 64 MB heap", "csv", "csv:Text - txt - csv (StarCalc):44,34,76", "64m", 4);

        private final String figure;
        private final String ending;
        private final String filter;
        private final String heap;
        private final double goal;

        Form(String figure, String ending, String filter, String heap, double goal) {
            this.figure = figure;
            this.ending = ending;
            this.filter = filter;
            this.heap = heap;
            this.goal = goal;
        }
    }

    private PrintReport(Form form, int rows, boolean warm) {
        this.form = form;
        this.rows = rows;
        this.warm = warm;
    }

    static PrintReport pdf(int rows, boolean warm) {
        return new PrintReport(warm ? Form.PDF_WARM : Form.PDF_COLD, rows, warm);
    }

    static PrintReport xlsx(int rows) {
        return new PrintReport(Form.XLSX, rows, false);
    }

    static PrintReport csv(int rows) {
        return new PrintReport(Form.CSV, rows, false);
    }

    @Override
    public String figure() {
        return String.format(java.util.Locale.ROOT, "%,d rows as %s", rows, form.figure);
    }

    @Override
    public Unit unit() {
        return Unit.PER_SECOND;
    }

    @Override
    public int rounds() {
        return 5;
    }

    @Override
    public int warmUps() {
        return warm ? 5 : 1;
    }

    @Override
    public Field field(Path folder) throws Exception {
        SampleTable table = SampleTable.write(folder.resolve("table.csv"), rows);
        // founds the home, which the fresh process then finds
        new Site(folder.resolve("home")).close();
        Files.createDirectories(folder.resolve("office-out"));
        Contestant ours = warm
                ? new Warm(new Site(folder.resolve("home")), table, folder.resolve("ours.pdf"), rows)
                : Conversion.ours(table, folder, form.ending, form.heap, rows);
        Conversion office = Conversion.office(table, folder, form.ending, form.filter, rows);
        return new Field(ours, List.of(new Baseline(office, form.goal)));
    }

    private record Warm(Site site, SampleTable table, Path out, int rows) implements Contestant {
        @Override
        public String name() {
            return "the running program";
        }

        @Override
        public double lap() throws Exception {
            PdfPrinter printer = new PdfPrinter(site.home, site.journal, site::facts);
            return Timed.perSecond(rows, () -> Printing.pdf(printer, table, out));
        }

        @Override
        public void close() {
            site.close();
        }
    }
}
