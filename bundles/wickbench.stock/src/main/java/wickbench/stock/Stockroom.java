package wickbench.stock;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;

/**
 * What the stock room knows. Every method asks the index, so none may be called on the thread that paints.
 *
 * <p>Answers are as of an instant by when things were done, not by when they were written; so what is learnt later of a day
 * changes the answer about that day, and nothing else.
 */
@ProviderType
public interface Stockroom {

    /** Returns the kits as defined now, by name. */
    List<Kit> kits();

    Optional<Kit> kit(String name);

    /** Returns the kit whose boxes carry this trade item number. */
    Optional<Kit> kitOf(String gtin);

    /** Returns the revisions of the insert by which the methods of a kit are written now; more than one where they differ. */
    List<String> inserts(String kit);

    /** Returns every lot received by then, first expired first; used up, rejected and destroyed ones too. */
    List<Lot> lots(Instant at);

    Optional<Lot> lot(LotId id, Instant at);

    /** Returns lots that strips were read with and that nobody received, with how many. */
    List<Unreceived> unreceived();

    /** What was used without having been received. */
    record Unreceived(LotId lot, String kit, long strips, Instant first, Instant last) {}

    /** Returns decisions on a lot that stations made without knowing of one another, until somebody settles them; empty as a rule. */
    List<EntryRef> clashing(LotId id);

    /** Returns everything that was done with a lot, in the order in which it was done. */
    List<Happening> history(LotId id);

    /** Returns every result read with a lot. */
    Trace trace(LotId id);

    /** Returns the lot behind a result. */
    Optional<Trace> behind(UUID result);

    /** Returns what somebody must see to within so many days, most urgent first. */
    List<Due> due(Instant now, int days);

    /** Returns the outlook of every kit in use, by name. */
    List<Outlook> outlook(Instant now);

    /** Returns all equipment, first due first; retired ones last. */
    List<Device> equipment();

    /** Returns the zone by whose days labels expire. */
    ZoneId zone();
}
