package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;

/**
 * The first line of a station, as it stands in a folder.
 *
 * @param founded what it says; empty when it is no first entry of that station
 * @param foreign whether a line is there, whole, which is none: nothing that may still come makes it one
 */
record Beginning(Optional<Founded> founded, boolean foreign) {
    private static final Beginning NOT_YET = new Beginning(Optional.empty(), false);

    static Beginning of(StationFolder folder) throws IOException {
        if (!Files.exists(folder.segment(0))) {
            return NOT_YET;
        }
        try (Lines lines = new Lines(folder.segment(0), 0, Long.MAX_VALUE)) {
            if (!lines.next() || lines.holdsNul()) {
                return NOT_YET;
            }
            if (EntryLine.readStrictly("", lines.copy(), Kept.NOTHING.leaf()) instanceof Checked.Good<Entry> entry
                    && entry.value().ref().station().equals(folder.station())
                    && Founded.read(entry.value()) instanceof Checked.Good<Founded> founded) {
                return new Beginning(Optional.of(founded.value()), false);
            }
        }
        return new Beginning(Optional.empty(), true);
    }
}
