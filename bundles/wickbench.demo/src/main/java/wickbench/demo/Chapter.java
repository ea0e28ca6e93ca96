package wickbench.demo;

import java.time.Instant;
import java.util.UUID;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.RecordedReading;

/**
 * Something out of the ordinary that runs through the recorded months.
 *
 * <p>A chapter changes what happens, never what is recorded of it; what it tells at the end it has counted in the records.
 */
interface Chapter {

    /** Returns how much more stays at a point after cleaning, in tenfolds. */
    default double moreResidue(Plant.Point point, Plant.Kit kit, Instant when) {
        return 0;
    }

    /** Returns how often the control line of a lot's strips stays away. */
    default double invalidRate(LotId lot, double usual) {
        return usual;
    }

    /** Returns how often a reader overlooks a faint line. */
    default double missesFaint(PersonId reader, double usual, Instant when) {
        return usual;
    }

    /** Returns the edition of a line's cleaning procedure in force. */
    default int procedureEdition(Plant.Line line, int usual, Instant when) {
        return usual;
    }

    /** Tells whether somebody else reads a person's strips in their stead. */
    default boolean observed(PersonId operator, Instant when) {
        return false;
    }

    /** Hears of a reading once it is recorded. */
    void hear(RecordedReading recorded);

    /** Hears of a reading with the id of its entry. */
    default void hear(UUID entry, RecordedReading recorded) {
        hear(recorded);
    }

    Told told();
}
