package wickbench.stock.room;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.profile.SiteFacts;

/** Writes the entries of this bundle, each through the authority; acts that look before they write do so one after another. */
@Component(service = Pen.class)
public final class Pen {
    private final Home home;
    private final Journal journal;
    private final Authority authority;
    private final SiteFacts site;

    @Activate
    public Pen(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Authority authority,
            @Reference SiteFacts site) {
        this.home = home;
        this.journal = journal;
        this.authority = authority;
        this.site = site;
    }

    /** Returns an entry of this station about one thing, to be written later. */
    Draft draft(Actor by, String kind, Json.Obj body) {
        return new Draft(Draft.randomId(home.chance()), by.who(), kind, LotEventJson.VERSION, body);
    }

    Draft draft(Actor by, LotEvent event) {
        return draft(
                by,
                LotEventJson.kind(event),
                LotDoubts.into(LotEventJson.write(event), event, site.now().zone()));
    }

    Entry write(Act act, Draft draft, Actor by) {
        return write(act, List.of(draft), by).get(0);
    }

    /** Writes several, all or none; all but the first follow from it. */
    List<Entry> write(Act act, List<Draft> drafts, Actor by) {
        Draft first = authority.authorise(act, drafts.get(0), by.passphrase());
        List<Draft> rest = drafts.subList(1, drafts.size());
        return journal.append(java.util.stream.Stream.concat(java.util.stream.Stream.of(first), rest.stream())
                .toList());
    }
}
