package wickbench.training.book;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;

/** Writes into the journal what the authority lets pass. */
@Component(service = Pen.class)
public final class JournalPen implements Pen {
    private final Home home;
    private final Journal journal;
    private final Authority authority;

    @Activate
    public JournalPen(@Reference Home home, @Reference Journal journal, @Reference Authority authority) {
        this.home = home;
        this.journal = journal;
        this.authority = authority;
    }

    @Override
    public Entry write(Act act, String kind, Json.Obj body, Actor by) {
        Draft draft = new Draft(Draft.randomId(home.chance()), by.who(), kind, Kinds.VERSION, body);
        return journal.append(List.of(authority.authorise(act, draft, by.passphrase())))
                .get(0);
    }

    @Override
    public void asked(Act act, String kind, Actor by) {
        authority.authorise(
                act,
                new Draft(Draft.randomId(home.chance()), by.who(), kind, Kinds.VERSION, Json.object()),
                by.passphrase());
    }

    @Override
    public Home home() {
        return home;
    }

    @Override
    public Entry entry(EntryRef ref) {
        return Optional.of(ref)
                .flatMap(journal::entry)
                .orElseThrow(() -> new IllegalStateException(ref + " is in the index and not in the journal"));
    }
}
