package wickbench.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.report.ReportWords;
import wickbench.report.text.SiteClock;

/** Prints reports to PDF, each page under the plant's name and over the seals of what it draws from. */
@Component(property = ReportPrinter.MEDIA_TYPE + "=" + ReportPrinter.PDF)
public final class PdfPrinter implements ReportPrinter {
    private final Home home;
    private final Journal journal;
    private final SiteFacts facts;

    @Activate
    public PdfPrinter(@Reference Home home, @Reference Journal journal, @Reference SiteFacts facts) {
        this.home = home;
        this.journal = journal;
        this.facts = facts;
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
        Site site = facts.now();
        return new Chrome(
                plant(site, founding),
                ReportWords.get("pdf.printed", new SiteClock(site.zone()).minutes(now)),
                founding.filter(Founding::simulated).map(yes -> ReportWords.get("pdf.simulated")),
                new Seals(journal).of(report.drawnFrom()));
    }

    private static String plant(Site site, Optional<Founding> founding) {
        return site.plant()
                .or(() -> founding.map(known -> ReportWords.get("pdf.station", known.station())))
                .orElseGet(() -> ReportWords.get("pdf.not-founded"));
    }
}
