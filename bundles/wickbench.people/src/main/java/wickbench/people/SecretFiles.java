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

    @Activate
    public SecretFiles(@Reference Home home, @Reference Roster roster) {
        this.home = home;
        this.roster = roster;
    }

    /** Keeps a new passphrase, unless it is weak. */
    Hash passphrase(Known known, Passphrase fresh) {
        PersonFile file = need(known);
        Strength.refuseWeak(fresh, List.of(known.id().value(), file.name()));
        return keep(known, file.withPassphrase(Argon2id.hash(fresh, home.chance())));
    }

    Hash pin(Known known, Passphrase pin) {
        return keep(known, need(known).withPin(Argon2id.hash(pin, home.chance())));
    }

    Hash badge(Known known, String badge) {
        return keep(known, need(known).withBadge(badge, roster.files().salt()));
    }

    private Hash keep(Known known, PersonFile file) {
        return roster.files().keep(known.id(), file);
    }

    private PersonFile need(Known known) {
        return roster.file(known)
                .orElseThrow(() -> new Refusal("people.file", PeopleWords.get("people.file", known.id())));
    }
}
