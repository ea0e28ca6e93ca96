package wickbench.people;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Hash;

/** Writes what people show into their files; an entry that names a file is written after it. */
@Component(service = SecretFiles.class)
public final class SecretFiles {
    private final Home home;
    private final Roster roster;
    private final HashCost cost;

    @Activate
    public SecretFiles(@Reference Home home, @Reference Roster roster) {
        this(home, roster, HashCost.USUAL);
    }

    SecretFiles(Home home, Roster roster, HashCost cost) {
        this.home = home;
        this.roster = roster;
        this.cost = cost;
    }

    /** Makes one whose new hashes have another cost; the runtime makes those of {@link HashCost#USUAL}. */
    public static SecretFiles at(HashCost cost, Home home, Roster roster) {
        return new SecretFiles(home, roster, cost);
    }

    /** Keeps a new passphrase, unless it is weak. */
    Hash passphrase(Known known, Passphrase fresh) {
        PersonFile file = need(known);
        Strength.refuseWeak(fresh, List.of(known.id().value(), file.name()));
        return keep(known, file.withPassphrase(hash(fresh)));
    }

    Hash pin(Known known, Passphrase pin) {
        return keep(known, need(known).withPin(hash(pin)));
    }

    Hash badge(Known known, String badge) {
        return keep(known, need(known).withBadge(badge, roster.files().salt()));
    }

    /** Returns what is kept of a secret in its place. */
    String hash(Passphrase secret) {
        return Argon2id.hash(secret, cost, home.chance());
    }

    private Hash keep(Known known, PersonFile file) {
        return roster.files().keep(known.id(), file);
    }

    private PersonFile need(Known known) {
        return roster.file(known)
                .orElseThrow(() -> new Refusal("people.file", PeopleWords.get("people.file", known.id())));
    }
}
