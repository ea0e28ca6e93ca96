package wickbench.journal.services;

import java.util.ArrayList;
import java.util.List;
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
import wickbench.api.journal.JournalListener;
import wickbench.api.journal.SharedFiles;
import wickbench.journal.JournalFolder;

/** The one open journal behind all services of this bundle; takes the home at the first call and lets go of it at the end. */
@Component(service = OpenJournal.class)
public final class OpenJournal {
    private final BundleContext context;
    private final Home home;
    private final Listeners listeners;
    private final Beside beside;
    /** Whoever still works at the end of the program must not take the home again. */
    private boolean closed;

    private final List<JournalFolder> opened = new ArrayList<>(1);
    private final List<ServiceRegistration<HeldHome>> held = new ArrayList<>(1);

    @Activate
    public OpenJournal(BundleContext context, @Reference Home home) {
        this.context = context;
        this.home = home;
        listeners = new Listeners(context);
        beside = new Beside(context);
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

    /** A reference too, for what knows its files asks an index, which asks the journal. */
    @Reference(
            service = SharedFiles.class,
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC)
    void share(ServiceReference<SharedFiles> files) {
        beside.add(files);
    }

    void unshare(ServiceReference<SharedFiles> files) {
        beside.remove(files);
    }

    /** Opens the home, or tries again when another program held it at the last call. */
    synchronized JournalFolder journal() {
        if (closed) {
            throw new IllegalStateException("the journal was closed");
        }
        if (opened.isEmpty()) {
            opened.add(JournalFolder.open(home, listeners, beside));
            held.add(context.registerService(HeldHome.class, new HeldHome(home.folder()), null));
        }
        return opened.get(0);
    }

    @Deactivate
    synchronized void close() {
        closed = true;
        held.forEach(ServiceRegistration::unregister);
        held.clear();
        opened.forEach(JournalFolder::close);
        opened.clear();
    }
}
