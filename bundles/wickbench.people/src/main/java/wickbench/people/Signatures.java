package wickbench.people;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.authority.Signature;
import wickbench.api.authority.Signature.Standing;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;

/** Reads the whole journal for signatures. */
final class Signatures {
    private static final int OFTEN = 1000;

    private Signatures() {}

    /** An entry that has a signature or asks for one. */
    record Checked(Entry entry, Standing signature, Standing witness) {
        boolean foreign() {
            return signature instanceof Standing.Foreign || witness instanceof Standing.Foreign;
        }
    }

    static Checked of(Entry entry) {
        return new Checked(entry, Signature.under(entry), Signature.under(entry, Signature.WITNESS));
    }

    static List<Checked> all(Journal journal, Progress progress) {
        List<Checked> found = new ArrayList<>();
        for (StationId station : journal.stations()) {
            long size = journal.size(station);
            journal.read(station, 0, entry -> {
                Checked checked = of(entry);
                if (Signature.asked(entry.kind()) || concerns(checked)) {
                    found.add(checked);
                }
                return entry.ref().seq() % OFTEN != 0 || progress.at(entry.ref().seq(), size);
            });
        }
        return found;
    }

    private static boolean concerns(Checked checked) {
        return !(checked.signature() instanceof Standing.Unsigned) || !(checked.witness() instanceof Standing.Unsigned);
    }
}
