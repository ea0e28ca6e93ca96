package wickbench.journal.services;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import wickbench.api.journal.SharedFiles;

/** The files beside the journal, as the bundles that are there know them; each is made when first asked. */
final class Beside implements Supplier<List<SharedFiles>> {
    private final BundleContext context;
    private final List<ServiceReference<SharedFiles>> references = new CopyOnWriteArrayList<>();

    Beside(BundleContext context) {
        this.context = context;
    }

    void add(ServiceReference<SharedFiles> reference) {
        references.add(reference);
    }

    void remove(ServiceReference<SharedFiles> reference) {
        references.remove(reference);
    }

    @Override
    public List<SharedFiles> get() {
        return references.stream()
                .map(context::getService)
                .filter(Objects::nonNull)
                .toList();
    }
}
