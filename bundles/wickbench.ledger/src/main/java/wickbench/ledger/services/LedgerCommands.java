package wickbench.ledger.services;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Journal;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RunSheets;
import wickbench.api.report.ReportPrinter;
import wickbench.ledger.Results;

/** Brings {@code wickbench ledger …}; correcting and deciding need the bench, everything else does not. */
@Component(property = CommandSet.NAME + "=ledger")
public final class LedgerCommands implements CommandSet {
    private final Results results;
    private final Journal journal;
    private final SiteFacts site;
    private final List<People> people;
    private final ResultExport export;
    private final Optional<Correcting> correcting;
    private final Optional<Deciding> deciding;

    @Activate
    public LedgerCommands(
            @Reference Results results,
            @Reference Journal journal,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<ReadingDoor> door,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<RunSheets> sheets,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<OwedWork> owed) {
        this.results = results;
        this.journal = journal;
        this.site = site;
        this.people = people;
        export = new ResultExport(results, printers);
        correcting = door.flatMap(found -> sheets.map(reader -> new Correcting(found, reader)));
        deciding = owed.map(work -> new Deciding(work, results, journal));
    }

    @Override
    public Object commands(Terminal terminal) {
        return new LedgerCommand(
                results, correcting, deciding, export, terminal, new Print(terminal, journal, site, people));
    }
}
