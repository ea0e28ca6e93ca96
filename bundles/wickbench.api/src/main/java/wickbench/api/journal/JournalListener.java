package wickbench.api.journal;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** A service that hears of entries once they are on the disk, this station's and those that came in of others. */
@ConsumerType
@FunctionalInterface
public interface JournalListener {

    /**
     * Hears of new entries, all of one station, on the thread that appended them or took them in; must return at once and not
     * append.
     */
    void appended(List<Entry> entries);
}
