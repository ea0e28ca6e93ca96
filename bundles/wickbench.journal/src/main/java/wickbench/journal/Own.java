package wickbench.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Hash;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.StationId;

/** What a home holds of its own station. */
sealed interface Own {

    /** No entry yet. */
    enum Unfounded implements Own {
        UNFOUNDED
    }

    /**
     * It opened.
     *
     * @param writer empty when the folder cannot be written
     */
    record Open(Station station, Optional<StationWriter> writer) implements Own {}

    /**
     * The disk failed under its first entry, so nobody knows whether that is kept; nothing is tried again before it is opened anew.
     */
    record Failed(String why) implements Own {}

    /** Returns why nothing can be recorded, where the first entry failed. */
    default Optional<String> failed() {
        return this instanceof Failed failed ? Optional.of(failed.why()) : Optional.empty();
    }

    /** It contradicts its seal and must not be used; it may be verified. */
    record Tampered(StationId station, String text) implements Own {
        Refusal refusal() {
            return new Refusal(Say.TAMPERED, text);
        }
    }

    /** Returns the open station; empty before its first entry. */
    default Optional<Open> open() {
        if (this instanceof Tampered tampered) {
            throw tampered.refusal();
        }
        return this instanceof Open open ? Optional.of(open) : Optional.empty();
    }

    /** Returns the journal at a glance. */
    default JournalStatus status(Path home, List<String> notices, Optional<String> readOnly) {
        Optional<Station> station = open().map(Open::station);
        return new JournalStatus(
                home,
                station.map(found -> found.founded().founding()),
                station.map(found -> found.kept().size()).orElse(0L),
                station.map(Station::root).orElseGet(Kept.NOTHING::leaf),
                station.map(
                        found -> new Hash(found.founded().key().fingerprint().hex())),
                station.flatMap(Station::checkpoint),
                notices,
                readOnly.or(() -> open().flatMap(Open::writer).flatMap(StationWriter::broken)));
    }
}
