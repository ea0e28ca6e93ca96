package wickbench.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.home.Home;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.report.Letterhead;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.report.ReportWords;
import wickbench.report.text.SiteClock;

/** Prints reports to PDF, each page under the plant's name and over the seals of what it draws from. */
@Component(property = ReportPrinter.MEDIA_TYPE + "=" + ReportPrinter.PDF)
public final class PdfPrinter implements ReportPrinter {
    private final Home home;
    private final Journal journal;
    private final List<Letterhead> letterheads;

    /** @param letterheads none where no bundle knows the plant's name */
    @Activate
    public PdfPrinter(
            @Reference Home home,
            @Reference Journal journal,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<Letterhead> letterheads) {
        this.home = home;
        this.journal = journal;
        this.letterheads = List.copyOf(letterheads);
    }

    @Override
    public String mediaType() {
        return PDF;
    }

    @Override
    public void print(Report report, OutputStream out) throws IOException {
        Instant now = home.clock().instant();
        new PdfReport().print(report, chrome(report, now), now.toEpochMilli(), out);
    }

    private Chrome chrome(Report report, Instant now) {
        Optional<Founding> founding = journal.founding();
        return new Chrome(
                plant(founding),
                ReportWords.get("pdf.printed", SiteClock.of(founding).minutes(now)),
                founding.filter(Founding::simulated).map(yes -> ReportWords.get("pdf.simulated")),
                new Seals(journal).of(report.drawnFrom()));
    }

    private String plant(Optional<Founding> founding) {
        return letterheads.stream()
                .flatMap(letterhead -> letterhead.plant().stream())
                .findFirst()
                .or(() -> founding.map(known -> ReportWords.get("pdf.station", known.station())))
                .orElseGet(() -> ReportWords.get("pdf.not-founded"));
    }
}
