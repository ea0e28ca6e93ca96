package wickbench.journal.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.ServiceRegistration;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import wickbench.api.home.HeldHome;
import wickbench.api.home.Home;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalListener;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.journal.JournalFolder;

/** The journal as a service; takes the home at the first call and lets go of it when the service ends. */
@Component(service = Journal.class)
public final class JournalService implements Journal {
    private final BundleContext context;
    private final Home home;
    private final Listeners listeners;
    private final List<JournalFolder> opened = new ArrayList<>(1);
    private final List<ServiceRegistration<HeldHome>> held = new ArrayList<>(1);

    @Activate
    public JournalService(BundleContext context, @Reference Home home) {
        this.context = context;
        this.home = home;
        listeners = new Listeners(context);
    }

    /** Takes a reference and not the service, for most that listen to a journal also need one to start. */
    @Reference(
            service = JournalListener.class,
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC)
    void listen(ServiceReference<JournalListener> listener) {
        listeners.add(listener);
    }

    void unlisten(ServiceReference<JournalListener> listener) {
        listeners.remove(listener);
    }

    /** Opens the home, or tries again when another program held it at the last call. */
    private synchronized JournalFolder journal() {
        if (opened.isEmpty()) {
            opened.add(JournalFolder.open(home, listeners));
            held.add(context.registerService(HeldHome.class, new HeldHome(home.folder()), null));
        }
        return opened.get(0);
    }

    @Deactivate
    synchronized void close() {
        held.forEach(ServiceRegistration::unregister);
        held.clear();
        opened.forEach(JournalFolder::close);
        opened.clear();
    }

    @Override
    public Optional<Founding> founding() {
        return journal().founding();
    }

    @Override
    public Founding found(Founding wanted) {
        return journal().found(wanted);
    }

    @Override
    public List<StationId> stations() {
        return journal().stations();
    }

    @Override
    public long size(StationId station) {
        return journal().size(station);
    }

    @Override
    public List<Entry> append(List<Draft> drafts) {
        return journal().append(drafts);
    }

    @Override
    public void read(StationId station, long from, Predicate<Entry> reader) {
        journal().read(station, from, reader);
    }

    @Override
    public Optional<Entry> entry(EntryRef ref) {
        return journal().entry(ref);
    }

    @Override
    public Optional<String> line(EntryRef ref) {
        return journal().line(ref);
    }

    @Override
    public Optional<Checkpoint> checkpoint() {
        return journal().checkpoint();
    }

    @Override
    public JournalStatus status() {
        return journal().status();
    }

    @Override
    public Verification verify(Progress progress) {
        return journal().verify(progress);
    }
}
