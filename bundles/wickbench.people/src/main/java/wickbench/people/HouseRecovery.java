package wickbench.people;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Recovery;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.authority.Signature;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/** Makes a new administrator where the last one is lost: before a witness, or by the code that lies sealed. */
@Component
public final class HouseRecovery implements Recovery {
    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Roster roster;
    private final HouseSignIn signIn;
    private final HouseAuthority authority;
    private final Keeping keeping;
    private final SecretFiles files;

    @Activate
    public HouseRecovery(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference Roster roster,
            @Reference HouseSignIn signIn,
            @Reference HouseAuthority authority,
            @Reference Keeping keeping,
            @Reference SecretFiles files) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.roster = roster;
        this.signIn = signIn;
        this.authority = authority;
        this.keeping = keeping;
        this.files = files;
    }

    @Override
    public boolean sealed() {
        return open().isPresent();
    }

    @Override
    public synchronized String seal(Signing by) {
        authority.role(by.who(), Act.SEAL_RECOVERY).orRefuse();
        String code = RecoveryCode.drawn();
        CodeSealed sealed = new CodeSealed(files.hash(RecoveryCode.plain(code)));
        Draft draft = draft(CodeSealed.KIND, sealed.body(), by.who());
        journal.append(List.of(authority.authorise(Act.SEAL_RECOVERY, draft, Optional.of(by.passphrase()))));
        return code;
    }

    @Override
    public synchronized void byWitness(PersonId who, Passphrase once, Signing witness, String reason) {
        Known known = roster.need(who);
        refuseSame(witness.who(), who);
        refuseWithoutReason(reason);
        keeping.refuseWhileAdministratorsAct();
        signIn.open(witness.who(), witness.passphrase());
        append(
                known,
                once,
                reason,
                Optional.empty(),
                Optional.of(new Witness(witness.who(), Optional.of(witness.passphrase()))));
    }

    @Override
    public synchronized void byCode(
            PersonId who, Passphrase once, Passphrase code, Optional<Witness> witness, String reason) {
        Known known = roster.need(who);
        refuseWithoutReason(reason);
        refuseUnwitnessed(known, witness);
        Entry sealed = open().orElseThrow(() -> new Refusal("recover.none", PeopleWords.get("recover.none")));
        String hash = CodeSealed.read(sealed.ref().toString(), sealed.body())
                .orRefuse()
                .code();
        signIn.hear(who, Attempts.CODE, hash, RecoveryCode.plain(code));
        append(known, once, reason, Optional.of(sealed.ref()), witness);
    }

    /** Returns the entry of the code that opens; a row that names another entry, whoever wrote it, names none. */
    private Optional<Entry> open() {
        return index.read(RecoveryView.NAME, RecoveryView::open)
                .flatMap(journal::entry)
                .filter(entry -> entry.is(CodeSealed.KIND, CodeSealed.VERSION))
                .filter(entry -> Signature.under(entry).signed());
    }

    private void refuseUnwitnessed(Known known, Optional<Witness> witness) {
        List<Known> others = roster.here().stream()
                .filter(other -> !other.id().equals(known.id()))
                .toList();
        if (witness.isEmpty()) {
            if (!others.isEmpty()) {
                throw new Refusal("people.witness", PeopleWords.get("recover.witness"));
            }
            return;
        }
        refuseSame(witness.get().who(), known.id());
        roster.need(witness.get().who());
        boolean couldSign =
                others.stream().anyMatch(other -> other.secret() == Secret.PASSPHRASE && !other.is(Role.ADMINISTRATOR));
        if (witness.get().passphrase().isEmpty() && couldSign) {
            throw new Refusal("people.witness", PeopleWords.get("recover.keyed"));
        }
    }

    private void append(
            Known known, Passphrase once, String reason, Optional<EntryRef> code, Optional<Witness> witness) {
        Hash file = files.passphrase(known, once);
        String note = journal.checkpoint().orElseThrow().note();
        Optional<PersonId> watched =
                witness.filter(by -> by.passphrase().isEmpty()).map(Witness::who);
        Recovered body = new Recovered(known.id(), file, reason.strip(), note, code, watched);
        Draft draft =
                draft(Recovered.KIND, body.body(), witness.map(Witness::who).orElse(known.id()));
        journal.append(List.of(witness.flatMap(by -> by.passphrase()
                        .map(typed -> authority.signed(draft, Signature.WITNESS, by.who(), Act.WITNESS, typed)))
                .orElse(draft)));
        signIn.close(known.id());
    }

    private static void refuseWithoutReason(String reason) {
        if (reason.isBlank()) {
            throw new BadInput(Complaint.of("reason", PeopleWords.get("recover.reason")));
        }
    }

    private static void refuseSame(PersonId witness, PersonId who) {
        if (witness.equals(who)) {
            throw new Refusal("people.witness", PeopleWords.get("people.witness-other", witness));
        }
    }

    private Draft draft(String kind, Json.Obj body, PersonId by) {
        return new Draft(Draft.randomId(home.chance()), by, kind, 1, body);
    }
}
