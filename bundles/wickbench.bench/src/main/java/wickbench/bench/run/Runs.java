package wickbench.bench.run;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;

/** The runs of this station that are not finished; those of before a crash among them. */
@ProviderType
public interface Runs {

    /** Returns what is under way, oldest first; the first call reads the disk. */
    List<Run> open();

    /** Begins a run; it stands on the disk when the future is done. */
    CompletableFuture<Run> begin(List<RunStrip> strips, PersonId by);

    /** Looks at the clocks. */
    Moment now();
}
