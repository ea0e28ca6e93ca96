package wickbench.stations;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settlement;
import wickbench.api.clash.Settling;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.api.words.Words;

/** Settles clashes by an entry of its own, under a name. */
@Component
public final class ClashDesk implements Settling {
    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final Words words = Words.of(ClashDesk.class, "stations");

    @Activate
    public ClashDesk(
            @Reference Home home, @Reference Journal journal, @Reference Index index, @Reference Authority authority) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.authority = authority;
    }

    @Override
    public List<Clash> open() {
        return index.clashes();
    }

    @Override
    public synchronized void settle(
            String subject, EntryRef stands, String reason, PersonId by, Optional<Passphrase> passphrase) {
        Clash clash =
                index.clash(subject).orElseThrow(() -> new Refusal("clash.none", words.get("clash.none", subject)));
        if (!clash.decisions().contains(stands)) {
            throw new Refusal("clash.other", words.get("clash.other", stands, subject, clash.decisions()));
        }
        Settlement settlement = new Settlement(subject, stands, clash.decisions(), reason);
        Draft draft =
                new Draft(Draft.randomId(home.chance()), by, Settlement.KIND, Settlement.VERSION, settlement.body());
        journal.append(List.of(authority.authorise(Act.SETTLE_CLASH, draft, passphrase)));
    }
}
