package wickbench.api.part;

import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.api.progress.Progress;

/**
 * The install sets of this program and its home.
 *
 * <p>A change holds at once and after each start on this home. It is all or nothing: whatever refuses it, by
 * {@link wickbench.api.check.BadInput} or {@link wickbench.api.check.Refusal} {@code part.…}, leaves everything as it was. No change touches a
 * record. Must not be called on the UI thread.
 */
@ProviderType
public interface Parts {

    /** Returns all sets, those that run first. */
    List<PartSet> sets();

    /** Judges an archive as {@link #add} would, changes nothing, and returns what it holds. */
    PartSet look(Path archive);

    /**
     * Adds the set of a signed archive, in place of an older one of its name, and takes in what the journal has for it.
     *
     * @param progress hears how far the taking in is
     */
    PartSet add(Path archive, Actor by, Progress progress);

    /** Adds a set that the product holds and that does not run. */
    PartSet add(String name, Actor by, Progress progress);

    /** Removes a set; what it recorded stays in the journal, and is taken in again when the set is added again. */
    PartSet remove(String name, Actor by);
}
