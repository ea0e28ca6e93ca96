package wickbench.journal.services;

import java.nio.file.Path;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.Stations;

/** The other stations as a service. */
@Component(service = Stations.class)
public final class StationsService implements Stations {
    private final OpenJournal open;

    @Activate
    public StationsService(@Reference OpenJournal open) {
        this.open = open;
    }

    @Override
    public Sharing sharing() {
        return open.journal().others().sharing();
    }

    @Override
    public void share(Optional<Path> folder) {
        open.journal().others().share(folder);
    }

    @Override
    public Sharing exchange() {
        return open.journal().others().exchange();
    }
}
