package wickbench.people;

import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.ActWords;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permission.Allowed;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.Signature;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.SiteProfile;

/** Lets pass what a person may do, and puts their signature under it. */
@Component(service = {Authority.class, Permissions.class, HouseAuthority.class})
public final class HouseAuthority implements Authority, Permissions {
    private final Home home;
    private final Roster roster;
    private final HouseSignIn signIn;
    private final SiteProfile profile;
    private final Aging aging;

    @Activate
    public HouseAuthority(
            @Reference Home home,
            @Reference Roster roster,
            @Reference HouseSignIn signIn,
            @Reference SiteProfile profile) {
        this.home = home;
        this.roster = roster;
        this.signIn = signIn;
        this.profile = profile;
        aging = new Aging(home, profile);
    }

    @Override
    public Permission ask(PersonId by, Act act) {
        if (roster.all().isEmpty()) {
            return new Allowed();
        }
        Permission role = role(by, act);
        return role.allowed() ? proof(by) : role;
    }

    @Override
    public Draft authorise(Act act, Draft draft, Optional<Passphrase> passphrase) {
        boolean nobody = roster.all().isEmpty();
        if (!nobody || passphrase.isPresent()) {
            role(draft.by(), act).orRefuse();
        }
        if (passphrase.isPresent()) {
            return signed(draft, Signature.MEMBER, draft.by(), act, passphrase.get());
        }
        refuseUnsigned(act, draft.kind());
        if (!nobody) {
            proof(draft.by()).orRefuse();
        }
        return draft;
    }

    /** Returns the draft with somebody's signature in one of the two members. */
    Draft signed(Draft draft, String member, PersonId by, Act meaning, Passphrase passphrase) {
        signIn.open(by, passphrase);
        aged(by).orRefuse();
        Json.Obj signature =
                Signature.of(draft, by, home.clock().instant(), meaning).json();
        return new Draft(
                draft.id(), draft.by(), draft.kind(), draft.v(), draft.body().with(member, signature));
    }

    /** Returns whether somebody has one of the roles, as the journal knows them. */
    Permission role(PersonId by, Act act) {
        Optional<Known> known = roster.find(by);
        if (known.isEmpty()) {
            return denied("people.unknown", by);
        }
        boolean has = act.roles().isEmpty() || act.roles().stream().anyMatch(role -> roster.has(known.get(), role));
        return has ? new Allowed() : denied("people.role", by, ActWords.text(act), words(act));
    }

    private Permission proof(PersonId by) {
        return !signIn.asked() || signIn.sits(by) ? aged(by) : denied("sign-in.needed", by);
    }

    private Permission aged(PersonId by) {
        return roster.find(by).map(aging::ask).orElseGet(Allowed::new);
    }

    private void refuseUnsigned(Act act, String kind) {
        boolean profileAsks = profile.inForce(home.clock().instant())
                .filter(held -> held.requiredSignatures().contains(kind))
                .isPresent();
        if (profileAsks || act.signed() && signIn.asked()) {
            throw new Refusal("sign.needed", PeopleWords.get("sign.needed", ActWords.text(act)));
        }
    }

    private static Denied denied(String code, Object... values) {
        return new Denied(code, PeopleWords.get(code, values));
    }

    private static String words(Act act) {
        return act.roles().stream()
                .sorted()
                .map(Role::code)
                .map(code -> PeopleWords.get("role." + code))
                .collect(Collectors.joining(PeopleWords.get("or")));
    }
}
