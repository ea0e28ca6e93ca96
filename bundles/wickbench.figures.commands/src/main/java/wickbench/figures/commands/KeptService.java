package wickbench.figures.commands;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.figures.sums.KeptSum;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;

/** Keeps sums in the journal; keeping the same sum again is another act, and so another entry. */
@Component
public final class KeptService implements KeptSums {
    private final Home home;
    private final Journal journal;
    private final Index index;

    @Activate
    public KeptService(@Reference Home home, @Reference Journal journal, @Reference Index index) {
        this.home = home;
        this.journal = journal;
        this.index = index;
    }

    @Override
    public EntryRef keep(PersonId by, Sum sum, Reckoned.Done done, Optional<String> about) {
        KeptSum kept = KeptSum.of(sum, done, about);
        Draft draft = new Draft(Draft.randomId(home.chance()), by, KeptSum.KIND, KeptSum.VERSION, kept.body());
        return journal.append(List.of(draft)).get(0).ref();
    }

    @Override
    public List<Kept> newest(int most) {
        return index.read(KeptView.NAME, rows -> KeptView.newest(rows, most)).stream()
                .flatMap(ref -> find(ref).stream())
                .toList();
    }

    @Override
    public Optional<Kept> find(EntryRef ref) {
        return journal.entry(ref)
                .filter(entry -> entry.is(KeptSum.KIND, KeptSum.VERSION))
                .map(KeptService::kept);
    }

    private static Kept kept(Entry entry) {
        KeptSum what = KeptSum.read(entry.ref().toString(), entry.body()).orRefuse();
        return new Kept(entry.ref(), entry.by(), entry.at(), what);
    }
}
