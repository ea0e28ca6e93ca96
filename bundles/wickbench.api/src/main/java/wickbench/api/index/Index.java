package wickbench.api.index;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.clash.Clash;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Sighting;
import wickbench.api.progress.Progress;

/**
 * The index over all views of the installed bundles.
 *
 * <p>A read first takes in what the journal has got since, so whoever appended an entry finds it. Throws
 * {@link wickbench.api.check.Refusal} {@code index.ahead} when the index knows entries that the journal does not have: that is
 * tampering or a restored copy, never a reason to rebuild silently. Reading a view that could not take in everything is refused
 * too ({@code index.behind}), since an answer must not leave out what was recorded.
 */
@ProviderType
public interface Index {

    /**
     * Reads a view's tables.
     *
     * @param view the view's name
     * @throws IllegalStateException on the thread that {@link #refuseOn} named, or when there is no such view
     */
    <T> T read(String view, Function<Rows, T> work);

    /** Returns where the entry with this id stands, if it is here. */
    Optional<EntryRef> find(UUID id);

    /** Returns the decisions that stand against one another and that nobody has settled, by subject. */
    List<Clash> clashes();

    /** Returns the clash on a subject, if there is one. */
    Optional<Clash> clash(String subject);

    /** Returns how much each station has said to have taken in of each other, by station. */
    List<Sighting> sightings();

    /** Takes in everything the journal has, telling how far it is; stopped, it goes on from there at the next use. */
    void catchUp(Progress progress);

    /**
     * Throws all tables away and makes them again.
     *
     * <p>Stopped, the tables hold the first of the entries, whole; {@link #catchUp} or the next read takes in the rest.
     */
    void rebuild(Progress progress);

    /**
     * Makes all tables once more beside those that are read, and tells every row that differs.
     *
     * <p>Changes nothing. Finds what was changed, added, taken out or swapped behind the index.
     */
    IndexVerification verify(Progress progress);

    /**
     * Verifies, unless that was done since the file was opened and all held: while it is open, nobody else can write to it.
     *
     * <p>For what must not rest on a falsified row.
     */
    IndexVerification assured(Progress progress);

    /** Returns how far each view is. */
    List<ViewState> views();

    /** Returns what was found broken and made again, in words; empty when all is well. */
    List<String> notices();

    /** Refuses all use on this thread from now on, so that no screen waits for a disk. */
    void refuseOn(Thread thread);
}
