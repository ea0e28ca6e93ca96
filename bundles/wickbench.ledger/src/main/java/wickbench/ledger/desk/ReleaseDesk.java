package wickbench.ledger.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Stations;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.api.progress.Progress;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Released;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;

/** Lets lines and batches go where no rule says no. */
@Component
public final class ReleaseDesk implements Releasing {
    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final Results results;
    private final SiteFacts site;
    private final Acts acts;
    private final Sight sight;
    private final Optional<OwedWork> work;

    @Activate
    public ReleaseDesk(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference Authority authority,
            @Reference Results results,
            @Reference SiteFacts site,
            @Reference Stations stations,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<OwedWork> work) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.authority = authority;
        this.results = results;
        this.site = site;
        this.work = work;
        acts = new Acts(index, journal);
        sight = new Sight(stations, journal, index, results);
    }

    @Override
    public Standing standing(Subject subject) {
        return standing(gathered(subject));
    }

    private Gathered gathered(Subject subject) {
        OwedWork bench = work.orElseThrow(() -> new Refusal("ledger.no-bench", ActsWords.get("no-bench")));
        Cases cases = new Cases(index, results, acts, bench);
        return new Gathering(index, results, acts, cases, bench, site, sight).of(subject);
    }

    private Standing standing(Gathered of) {
        return new Standing(
                of.subject(),
                of.points(),
                of.results(),
                of.cases(),
                of.owed(),
                of.outside(),
                acts.released(of.subject()),
                ReleaseRules.against(of));
    }

    @Override
    public List<ReleasePlan> plans() {
        return acts.plans();
    }

    @Override
    public synchronized EntryRef plan(ReleasePlan plan, PersonId by, Optional<Passphrase> passphrase) {
        reason(plan.reason());
        Draft draft = new Draft(Draft.randomId(home.chance()), by, ReleasePlan.KIND, ReleasePlan.VERSION, plan.body());
        return journal.append(List.of(authority.authorise(Act.PLAN_RELEASE, draft, passphrase)))
                .get(0)
                .ref();
    }

    @Override
    public synchronized EntryRef release(Subject subject, String reason, PersonId by, Optional<Passphrase> passphrase) {
        reason(reason);
        Gathered of = gathered(subject);
        Standing standing = standing(of);
        List<UUID> rests = of.rests().stream().map(ResultRow::stands).toList();
        Draft draft = new Draft(
                Draft.randomId(home.chance()),
                by,
                Released.KIND,
                Released.VERSION,
                new Released(subject, rests, reason.strip()).body());
        Draft signed = authority.authorise(Act.RELEASE, draft, passphrase);
        List<No> reasons = new ArrayList<>(standing.reasons());
        ownReading(of, by).ifPresent(reasons::add);
        again(standing).ifPresent(reasons::add);
        if (reasons.isEmpty()) {
            results.falsified(Progress.NONE).forEach(why -> reasons.add(new No("release.differs", why)));
        }
        No.refuse(reasons);
        return journal.append(List.of(signed)).get(0).ref();
    }

    private Optional<No> ownReading(Gathered of, PersonId by) {
        return of.results().stream()
                .flatMap(row -> results.find(row.id()).stream())
                .filter(detail -> Readers.of(detail).contains(by))
                .findFirst()
                .map(detail ->
                        ReleaseRules.no("release.own-reading", by, detail.row().sample()));
    }

    /** A batch goes once, unless something was read of it since. */
    private static Optional<No> again(Standing standing) {
        return standing.released().stream()
                .map(Entry::at)
                .max(java.time.Instant::compareTo)
                .filter(at -> standing.results().stream()
                        .noneMatch(row -> row.recorded().isAfter(at)))
                .map(at -> ReleaseRules.no("release.already", standing.subject().name(), at));
    }

    private static void reason(String reason) {
        if (reason.isBlank()) {
            throw new BadInput(Complaint.of("reason", ActsWords.get("release.reason")));
        }
    }
}
