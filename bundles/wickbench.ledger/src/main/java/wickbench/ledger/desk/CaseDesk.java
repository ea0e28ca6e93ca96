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
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Stations;
import wickbench.api.json.Json;
import wickbench.api.owed.Ordered;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Settled;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.api.reading.Owed;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Decided;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Product;

/** Takes decisions: what was decided, what is owed from then on and what no longer, recorded together or not at all. */
@Component
public final class CaseDesk implements Deciding {
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final Results results;
    private final Acts acts;
    private final Sight sight;
    private final Optional<OwedWork> work;

    @Activate
    public CaseDesk(
            @Reference Journal journal,
            @Reference Index index,
            @Reference Authority authority,
            @Reference Results results,
            @Reference Stations stations,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<OwedWork> work) {
        this.journal = journal;
        this.index = index;
        this.authority = authority;
        this.results = results;
        this.work = work;
        acts = new Acts(index, journal);
        sight = new Sight(stations, journal, index, results);
    }

    @Override
    public Optional<Case> of(UUID result) {
        return results.find(result).map(detail -> cases().of(detail.row()));
    }

    @Override
    public List<Case> open() {
        return cases().open();
    }

    @Override
    public List<Entry> outside(int most) {
        return acts.outside(most);
    }

    private Cases cases() {
        OwedWork bench = work.orElseThrow(() -> new Refusal("ledger.no-bench", ActsWords.get("no-bench")));
        return new Cases(index, results, acts, bench);
    }

    @Override
    public synchronized EntryRef decide(Wish wish, PersonId by, Optional<Passphrase> passphrase) {
        ResultDetail detail = results.find(wish.result())
                .orElseThrow(() -> new Refusal("decide.unknown", ActsWords.get("decide.unknown", wish.result())));
        Case of = cases().of(detail.row());
        DecideRules.Asked asked = new DecideRules.Asked(of, detail, wish, by, any -> sight.lacking());
        Act act = wish.move() == Move.RELEASE ? Act.RELEASE : Act.DECIDE_ACTION;
        Json.Obj body = decided(asked).body();
        // the same may be decided twice, with other decisions between
        UUID id = Draft.contentId(Decided.KIND, body.with("after", of.taken().size()));
        Draft draft = authority.authorise(act, new Draft(id, by, Decided.KIND, Decided.VERSION, body), passphrase);
        List<No> reasons = DecideRules.against(asked);
        if (reasons.isEmpty() && wish.move() == Move.RELEASE) {
            reasons.addAll(results.falsified(Progress.NONE).stream()
                    .map(why -> new No("decide.differs", why))
                    .toList());
        }
        No.refuse(reasons);
        List<Draft> drafts = new ArrayList<>(List.of(draft));
        wish.move()
                .orders()
                .ifPresent(owed -> drafts.add(authority.authorise(
                        Act.DECIDE_ACTION,
                        with(
                                draft,
                                Ordered.KIND,
                                Ordered.VERSION,
                                new Ordered(of.result().id(), owed, wish.reason()).body()),
                        passphrase)));
        if (asked.ends() && of.owed().stream().anyMatch(CaseDesk::holds)) {
            Settled settled = new Settled(of.result().id(), Owed.HOLD, wish.reason(), List.of());
            drafts.add(authority.authorise(
                    Act.SETTLE_OWED, with(draft, Settled.KIND, Settled.VERSION, settled.body()), passphrase));
        }
        return journal.append(drafts).get(0).ref();
    }

    private static boolean holds(OwedItem item) {
        return item.step() == Step.HOLD && !item.done();
    }

    private static Decided decided(DecideRules.Asked asked) {
        Wish wish = asked.wish();
        if (wish.reason().isBlank()) {
            throw new BadInput(Complaint.of("reason", ActsWords.get("decide.reason")));
        }
        return new Decided(
                asked.of().result().id(),
                wish.move(),
                asked.products().stream()
                        .map(Product::name)
                        .filter(name -> !name.isEmpty())
                        .toList(),
                wish.reason().strip(),
                wish.cause().map(String::strip).filter(text -> !text.isEmpty()),
                asked.of().lastGood());
    }

    /** What is recorded with a decision has an id of its own that follows from it. */
    private static Draft with(Draft decision, String kind, int version, Json.Obj body) {
        UUID id = Draft.contentId(kind, body.with("decision", decision.id().toString()));
        return new Draft(id, decision.by(), kind, version, body);
    }

    @Override
    public EntryRef reported(Outside outside, PersonId by) {
        outside.results().stream()
                .filter(id -> results.find(id).isEmpty())
                .findFirst()
                .ifPresent(id -> {
                    throw new Refusal("decide.unknown", ActsWords.get("decide.unknown", id));
                });
        Json.Obj body = outside.body();
        UUID id = Draft.contentId(Outside.KIND, body);
        return index.find(id)
                .orElseGet(() -> journal.append(List.of(new Draft(id, by, Outside.KIND, Outside.VERSION, body)))
                        .get(0)
                        .ref());
    }
}
