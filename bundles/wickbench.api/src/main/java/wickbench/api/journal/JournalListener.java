package wickbench.api.journal;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** A service that hears of entries once they are on the disk. */
@ConsumerType
@FunctionalInterface
public interface JournalListener {

    /** Hears of new entries, on the thread that appended them; must return at once and not append. */
    void appended(List<Entry> entries);
}
