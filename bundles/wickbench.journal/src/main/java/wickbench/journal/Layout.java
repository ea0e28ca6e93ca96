package wickbench.journal;

import java.nio.file.Path;
import wickbench.api.journal.StationId;

/** Where the files of a home's journal lie. */
record Layout(Path home) {

    Path lock() {
        return home.resolve("lock");
    }

    Path holder() {
        return home.resolve("holder.json");
    }

    Path stations() {
        return home.resolve("journal");
    }

    StationFolder station(StationId station) {
        return new StationFolder(station, stations().resolve(station.value()));
    }

    /** Hashes that can be thrown away at any time. */
    Path tree(StationId station) {
        return home.resolve("tree").resolve(station.value());
    }

    Path key(StationId station) {
        return home.resolve("keys").resolve(station + ".pem");
    }
}
