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
import wickbench.api.home.Home;
import wickbench.api.journal.Journal;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.api.report.ReportPrinter;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Correcting;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Reviewing;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.trend.Trending;

/** Brings {@code wickbench ledger …}; correcting and deciding need the bench, everything else does not. */
@Component(property = CommandSet.NAME + "=ledger")
public final class LedgerCommands implements CommandSet {
    private final Results results;
    private final Journal journal;
    private final SiteFacts site;
    private final List<People> people;
    private final ResultExport export;
    private final Doors doors;
    private final Home home;

    @Activate
    public LedgerCommands(
            @Reference Home home,
            @Reference Results results,
            @Reference Journal journal,
            @Reference SiteFacts site,
            @Reference Reviewing reviewing,
            @Reference Correcting correcting,
            @Reference Deciding deciding,
            @Reference Releasing releasing,
            @Reference Packing packing,
            @Reference Trending trending,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<OwedWork> owed) {
        this.home = home;
        this.results = results;
        this.journal = journal;
        this.site = site;
        this.people = people;
        export = new ResultExport(results, printers);
        doors = new Doors(
                correcting,
                owed.map(work -> new DoubtDecision(work, results, journal)),
                reviewing,
                deciding,
                releasing,
                packing,
                trending);
    }

    @Override
    public Object commands(Terminal terminal) {
        return new LedgerCommand(
                results,
                doors,
                export,
                terminal,
                new Print(terminal, journal, site, new PersonNames(people)),
                new ActsPrint(terminal, site, home.clock()));
    }
}
