package wickbench.index.services;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import wickbench.api.clash.Clash;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.IndexVerification;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.index.ViewState;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Sighting;
import wickbench.api.progress.Progress;
import wickbench.index.H2Index;

/** The index of the home, over the views of the bundles that are there. */
@Component
public final class HouseIndex implements Index {
    private static final String FOLDER = "index";

    private final List<IndexView> views = new CopyOnWriteArrayList<>();
    private final H2Index index;

    @Activate
    public HouseIndex(@Reference Home home, @Reference Journal journal) {
        index = H2Index.open(home.folder().resolve(FOLDER), journal, () -> List.copyOf(views));
    }

    /** Takes up a view; from its next use on the index holds its tables. */
    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addView(IndexView view) {
        views.add(view);
    }

    void removeView(IndexView view) {
        views.remove(view);
    }

    @Deactivate
    void close() {
        index.close();
    }

    @Override
    public <T> T read(String view, Function<Rows, T> work) {
        return index.read(view, work);
    }

    @Override
    public Optional<EntryRef> find(UUID id) {
        return index.find(id);
    }

    @Override
    public List<Clash> clashes() {
        return index.clashes();
    }

    @Override
    public Optional<Clash> clash(String subject) {
        return index.clash(subject);
    }

    @Override
    public List<Sighting> sightings() {
        return index.sightings();
    }

    @Override
    public void catchUp(Progress progress) {
        index.catchUp(progress);
    }

    @Override
    public void rebuild(Progress progress) {
        index.rebuild(progress);
    }

    @Override
    public IndexVerification verify(Progress progress) {
        return index.verify(progress);
    }

    @Override
    public IndexVerification assured(Progress progress) {
        return index.assured(progress);
    }

    @Override
    public List<ViewState> views() {
        return index.views();
    }

    @Override
    public List<String> notices() {
        return index.notices();
    }

    @Override
    public void refuseOn(Thread thread) {
        index.refuseOn(thread);
    }
}
