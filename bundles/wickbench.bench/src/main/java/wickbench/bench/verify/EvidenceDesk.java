package wickbench.bench.verify;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Signature;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.person.PersonId;
import wickbench.bench.evidence.Shown;
import wickbench.bench.evidence.Verification;
import wickbench.bench.evidence.Verifications;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.KeptSums.Kept;

/** Keeps what methods were verified for as entries of the journal. */
@Component
public final class EvidenceDesk implements Verifications {
    /** What can show something: a sum with its inputs, or a file. */
    private static final Set<String> SHOWING = Set.of("figure.kept", "attachment.added");

    private static final int MOST_KEPT = 60;

    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final Methods methods;
    private final Optional<KeptSums> kept;

    @Activate
    public EvidenceDesk(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference Authority authority,
            @Reference Methods methods,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<KeptSums> kept) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.authority = authority;
        this.methods = methods;
        this.kept = kept;
    }

    @Override
    public List<Verified> of(MethodId method) {
        return index.read(EvidenceView.NAME, rows -> EvidenceView.of(method, rows)).stream()
                .flatMap(ref -> journal.entry(ref).stream())
                .map(this::verified)
                .toList();
    }

    private Verified verified(Entry entry) {
        return new Verified(
                entry.ref(),
                Verification.read(entry.ref().toString(), entry.body()).orRefuse(),
                entry.at(),
                entry.by(),
                Signature.under(entry).signed(),
                index.read(EvidenceView.NAME, rows -> EvidenceView.end(entry.ref(), rows))
                        .flatMap(journal::entry)
                        .map(EvidenceDesk::ended));
    }

    @Override
    public List<Kept> kept() {
        return kept.map(sums -> sums.newest(MOST_KEPT)).orElse(List.of());
    }

    @Override
    public List<Shown> shown(Verified verified) {
        Optional<Method> method = methods.versions(verified.what().method().id()).stream()
                .map(Methods.IssuedMethod::method)
                .filter(each -> each.ref().equals(verified.what().method()))
                .findFirst();
        return verified.what().evidence().stream()
                .map(ref -> kept.flatMap(sums -> sums.find(ref))
                        .flatMap(found -> method.map(of -> EvidenceReader.sum(of, found)))
                        .orElseGet(() -> EvidenceReader.file(ref)))
                .toList();
    }

    private static Ended ended(Entry entry) {
        return new Ended(
                entry.at(),
                entry.by(),
                Fields.of(entry.ref().toString(), entry.body()).text("reason"));
    }

    @Override
    public synchronized EntryRef verify(Verification what, PersonId by, Optional<Passphrase> passphrase) {
        check(what);
        Draft draft = authority.authorise(Act.VERIFY_METHOD, draft(by, Verification.KIND, what.body()), passphrase);
        if (methods.versions(what.method().id()).stream()
                .noneMatch(issued -> issued.method().ref().equals(what.method()))) {
            throw new Refusal("method.not-issued", VerifyWords.get("not-issued", what.method()));
        }
        return journal.append(List.of(draft)).get(0).ref();
    }

    /** Said again it is another act: what had ended may be shown to work anew. */
    private Draft draft(PersonId by, String kind, Json.Obj body) {
        return new Draft(Draft.randomId(home.chance()), by, kind, Verification.VERSION, body);
    }

    private void check(Verification what) {
        if (what.what().isBlank()) {
            throw bad("food", "for-nothing");
        }
        if (what.evidence().isEmpty() && what.remark().isEmpty()) {
            throw bad("evidence", "by-nothing");
        }
        for (EntryRef ref : what.evidence()) {
            if (journal.entry(ref)
                    .filter(entry -> SHOWING.contains(entry.kind()))
                    .isEmpty()) {
                throw bad("evidence", "no-evidence", ref);
            }
        }
    }

    private static BadInput bad(String field, String key, Object... values) {
        return new BadInput(Complaint.of(field, VerifyWords.get(key, values)));
    }

    @Override
    public synchronized void end(EntryRef verified, String reason, PersonId by, Optional<Passphrase> passphrase) {
        if (reason.isBlank()) {
            throw bad("reason", "no-reason");
        }
        Json.Obj body = Json.object().with("verified", verified.toString()).with("reason", reason);
        Draft draft = authority.authorise(Act.VERIFY_METHOD, draft(by, EvidenceView.ENDED, body), passphrase);
        boolean stands = journal.entry(verified)
                        .filter(entry -> entry.is(Verification.KIND, Verification.VERSION))
                        .isPresent()
                && index.read(EvidenceView.NAME, rows -> EvidenceView.end(verified, rows))
                        .isEmpty();
        if (!stands) {
            throw new Refusal("method.not-verified-by", VerifyWords.get("not-standing", verified));
        }
        journal.append(List.of(draft));
    }
}
