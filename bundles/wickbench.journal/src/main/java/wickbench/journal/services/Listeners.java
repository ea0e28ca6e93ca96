package wickbench.journal.services;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import wickbench.api.journal.Entry;
import wickbench.api.journal.JournalListener;

/** Those who hear of new entries; each is made at the first entry after it was installed. */
final class Listeners implements Consumer<List<Entry>> {
    private final BundleContext context;
    private final List<ServiceReference<JournalListener>> references = new CopyOnWriteArrayList<>();

    Listeners(BundleContext context) {
        this.context = context;
    }

    void add(ServiceReference<JournalListener> reference) {
        references.add(reference);
    }

    void remove(ServiceReference<JournalListener> reference) {
        references.remove(reference);
    }

    @Override
    public void accept(List<Entry> entries) {
        references.forEach(reference -> tell(reference, entries));
    }

    private void tell(ServiceReference<JournalListener> reference, List<Entry> entries) {
        JournalListener listener = context.getService(reference);
        // one that left between the append and here has nothing to hear
        if (listener != null) {
            try {
                listener.appended(entries);
            } finally {
                context.ungetService(reference);
            }
        }
    }
}
