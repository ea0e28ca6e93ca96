package wickbench.ledger.services;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.journal.Entry;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.ReportSource;
import wickbench.ledger.Filter;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.papers.FilterText;
import wickbench.ledger.papers.Papers;

/** Makes the reports of a day, a line, a month, a batch, and of whatever passes a filter. */
@Component
public final class PapersDesk implements Papers, ReportSource {
    private final Results results;
    private final Deciding deciding;
    private final Releasing releasing;
    private final SiteFacts site;
    private final PersonNames people;
    private final Printing printing;

    @Activate
    public PapersDesk(
            @Reference Results results,
            @Reference Deciding deciding,
            @Reference Releasing releasing,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.results = results;
        this.deciding = deciding;
        this.releasing = releasing;
        this.site = site;
        this.people = new PersonNames(people);
        printing = new Printing(printers);
    }

    @Override
    public Report report(Wanted wanted) {
        Filter days = Filter.ALL.days(wanted.from(), wanted.to());
        return switch (wanted.of()) {
            case DAY -> {
                Optional<LocalDate> day = Optional.of(parsed(wanted.name(), LocalDate::parse, "report.day.expected"));
                yield of("report.title.day", wanted.name(), Filter.ALL.days(day, day));
            }
            case MONTH -> {
                YearMonth month = parsed(wanted.name(), YearMonth::parse, "report.month.expected");
                yield of(
                        "report.title.month",
                        wanted.name(),
                        Filter.ALL.days(Optional.of(month.atDay(1)), Optional.of(month.atEndOfMonth())));
            }
            case LINE -> of("report.title.line", wanted.name(), days.withLine(Optional.of(wanted.name())));
            case BATCH -> batch(wanted.name(), days);
        };
    }

    private static <T> T parsed(String name, Function<String, T> parse, String expected) {
        try {
            return parse.apply(name);
        } catch (DateTimeException e) {
            throw new BadInput(Complaint.of("NAME", LedgerWords.get(expected, name)));
        }
    }

    @Override
    public Report results(Filter filter) {
        return of("report.title.results", FilterText.of(filter), filter);
    }

    @Override
    public Report batch(String name, Filter filter) {
        Standing standing = releasing.standing(Subject.batch(name));
        return made().report(
                        LedgerWords.get("report.title.batch", name),
                        filter.withBatch(Optional.of(name)),
                        new BatchSections(signed()).of(standing),
                        standing.released().stream().map(Entry::ref).toList());
    }

    private Report of(String title, String name, Filter filter) {
        return made().report(LedgerWords.get(title, name), filter, List.of(), List.of());
    }

    private ResultsReport made() {
        return new ResultsReport(results, deciding, signed());
    }

    private SignedBy signed() {
        return new SignedBy(new SiteClock(site.now().zone()), people::of);
    }

    @Override
    public void print(Report report, Path file) {
        printing.print(report, file);
    }
}
