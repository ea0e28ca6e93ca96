package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Entry;

/** What the shared folder still holds of a station whose home was made from a back-up: the entries that came after it. */
final class OwnTail {
    private OwnTail() {}

    /** Takes as much as is there, follows what is here, and is signed by this station's key; returns the entries taken. */
    static List<Entry> take(StationFolder there, Station here, StationWriter writer) throws IOException {
        List<Entry> back = new ArrayList<>();
        long from = here.folder().checkpoints().toFile().length();
        try (Lines lines = new Lines(there.checkpoints(), from, Long.MAX_VALUE)) {
            boolean more = true;
            while (more && lines.next()) {
                Optional<Seal> seal = Seal.parse(new String(lines.copy(), StandardCharsets.UTF_8))
                        .filter(signed -> signed.holds(here.founded().key(), there.station()));
                more = seal.isPresent() && take(there, here, seal.get(), writer, back);
            }
        }
        return back;
    }

    private static boolean take(StationFolder there, Station here, Seal seal, StationWriter writer, List<Entry> back)
            throws IOException {
        Stretch stretch = Stretch.read(there, here, seal);
        if (!stretch.fits(seal)) {
            // on its way still, or not what was signed
            return false;
        }
        writer.takeBack(stretch, seal);
        back.addAll(stretch.entries());
        return true;
    }
}
