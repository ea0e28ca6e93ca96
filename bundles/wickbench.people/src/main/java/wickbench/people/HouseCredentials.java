package wickbench.people;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.authority.Signature;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/** Sets what people show to be known again, and forgets them. */
@Component
public final class HouseCredentials implements Credentials {
    private static final int LONGEST_BADGE = 200;

    private final Home home;
    private final Journal journal;
    private final Roster roster;
    private final HouseSignIn signIn;
    private final HouseAuthority authority;
    private final Keeping keeping;
    private final SecretFiles files;

    @Activate
    public HouseCredentials(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Roster roster,
            @Reference HouseSignIn signIn,
            @Reference HouseAuthority authority,
            @Reference Keeping keeping,
            @Reference SecretFiles files) {
        this.home = home;
        this.journal = journal;
        this.roster = roster;
        this.signIn = signIn;
        this.authority = authority;
        this.keeping = keeping;
        this.files = files;
    }

    @Override
    public synchronized void set(PersonId who, Optional<Passphrase> now, Passphrase fresh) {
        Known known = roster.need(who);
        if (now.isPresent()) {
            signIn.prove(who, now.get());
            if (now.get().same(fresh)) {
                throw new BadInput(Complaint.of("passphrase", PeopleWords.get("passphrase.same")));
            }
        } else {
            refuseUnproved(known);
        }
        append(FileChanged.PASSPHRASE, new FileChanged(who, files.passphrase(known, fresh), false), who);
        signIn.close(who);
    }

    /** Only the very first passphrase of the house, an administrator's, needs none before it. */
    private void refuseUnproved(Known known) {
        if (known.secret() != Secret.NONE) {
            throw new Refusal("sign-in.needed", PeopleWords.get("passphrase.now", known.id()));
        }
        if (signIn.asked()) {
            throw new Refusal("sign-in.none", PeopleWords.get("sign-in.none", known.id()));
        }
        if (!roster.has(known, Role.ADMINISTRATOR)) {
            throw new Refusal("people.role", PeopleWords.get("passphrase.first"));
        }
    }

    @Override
    public synchronized void reset(PersonId who, Passphrase once, Signing by, Optional<Signing> witness) {
        Known known = roster.need(who);
        authority.role(by.who(), Act.RESET_PASSPHRASE).orRefuse();
        if (known.keyed() && witness.isEmpty()) {
            throw new Refusal("people.witness", PeopleWords.get("people.witness", who));
        }
        witness.ifPresent(second -> refuseSame(second.who(), who, by.who()));
        if (by.who().equals(who)) {
            throw new Refusal("people.witness", PeopleWords.get("people.own-reset"));
        }
        Hash file = files.passphrase(known, once);
        Draft draft = draft(FileChanged.PASSPHRASE, new FileChanged(who, file, true).body(), by.who());
        Draft signed = authority.authorise(Act.RESET_PASSPHRASE, draft, Optional.of(by.passphrase()));
        journal.append(List.of(witness.map(second -> witnessed(signed, second)).orElse(signed)));
        signIn.close(who);
    }

    @Override
    public synchronized void pin(PersonId who, Passphrase pin, PersonId by) {
        Known known = roster.need(who);
        Strength.refuseWeakPin(pin);
        refuseStranger(who, by);
        append(FileChanged.PIN, new FileChanged(who, files.pin(known, pin), false), by);
    }

    @Override
    public synchronized void badge(PersonId who, String badge, PersonId by) {
        Known known = roster.need(who);
        refuseStranger(who, by);
        if (badge.isBlank() || badge.length() > LONGEST_BADGE) {
            throw new BadInput(Complaint.of("badge", PeopleWords.get("badge.form", LONGEST_BADGE)));
        }
        if (roster.here().stream().flatMap(each -> roster.file(each).stream()).anyMatch(file -> file.wears(badge))) {
            throw new Refusal("badge.taken", PeopleWords.get("badge.taken"));
        }
        append(FileChanged.BADGE, new FileChanged(who, files.badge(known, badge), false), by);
    }

    @Override
    public synchronized void forget(PersonId who, PersonId by, Optional<Passphrase> passphrase) {
        Known known = roster.need(who);
        Draft draft = draft(Forgotten.KIND, new Forgotten(who).body(), by);
        Draft allowed = authority.authorise(Act.FORGET_PERSON, draft, passphrase);
        keeping.refuseLastAdministrator(known, java.util.Set.of());
        keeping.refuseWhileKept(who);
        journal.append(List.of(allowed));
        signIn.close(who);
        roster.files().remove(who);
    }

    /** One's own bench key one sets oneself, sitting here; anybody else's an administrator does. */
    private void refuseStranger(PersonId who, PersonId by) {
        boolean own = who.equals(by) && (!signIn.asked() || signIn.sits(by));
        if (!own) {
            authority.ask(by, Act.SET_BENCH_KEY).orRefuse();
        }
    }

    private static void refuseSame(PersonId witness, PersonId who, PersonId by) {
        if (witness.equals(who) || witness.equals(by)) {
            throw new Refusal("people.witness", PeopleWords.get("people.witness-other", witness));
        }
    }

    private Draft witnessed(Draft draft, Signing witness) {
        return authority.signed(draft, Signature.WITNESS, witness.who(), Act.WITNESS, witness.passphrase());
    }

    private void append(String kind, FileChanged body, PersonId by) {
        journal.append(List.of(draft(kind, body.body(), by)));
    }

    private Draft draft(String kind, Json.Obj body, PersonId by) {
        return new Draft(Draft.randomId(home.chance()), by, kind, 1, body);
    }
}
