package wickbench.journal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;

/** What the exchange with other stations asks of this station's journal. */
interface Host {

    Disk disk();

    Layout layout();

    Copies copies();

    Station own();

    /** Signs what is kept, if that is not done yet; returns how far the files may be shown to others. */
    Shown seal();

    /**
     * How far the files of this station may be shown.
     *
     * @param seal empty before the first checkpoint
     * @param checkpoints bytes of the list of checkpoints
     */
    record Shown(Optional<Seal> seal, long checkpoints) {}

    /** Returns how this station's journal pinned another, if it did. */
    Optional<Pin> pinned(StationId station);

    /** Records what the journal itself has to tell. */
    void record(String kind, int v, Json.Obj body);

    /** Tells those who listen of entries that came in. */
    void tell(List<Entry> entries);

    /** Tells whether this home was made from a back-up and nothing was recorded in it since. */
    boolean restored();

    /** Takes back what a folder holds of this station beyond what is here, as far as this station's key signed it. */
    void takeBack(StationFolder there) throws IOException;

    /** Records nothing for now, and says why; blank when it may again. */
    void hold(String why);

    /** Records nothing more from now on, and says why. */
    void refuse(String why);
}
