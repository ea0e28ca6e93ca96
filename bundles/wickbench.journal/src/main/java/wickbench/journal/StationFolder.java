package wickbench.journal;

import java.nio.file.Path;
import java.util.Locale;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;

/** Where the files of one station lie. */
record StationFolder(StationId station, Path folder) {
    /** Entries in a segment, so that the place of an entry gives its file by a division. */
    static final int SEGMENT = 10_000;

    static long segmentOf(long place) {
        return place / SEGMENT;
    }

    Path segment(long number) {
        return folder.resolve(String.format(Locale.ROOT, "entries-%06d.jsonl", number));
    }

    Path checkpoints() {
        return folder.resolve("checkpoints.jsonl");
    }

    /** The newest checkpoint alone, as the signed text that others may copy. */
    Path note() {
        return folder.resolve("checkpoint");
    }

    Path torn(String what, Hash content) {
        return folder.resolve("torn-" + what + "-" + content.hex().substring(0, 12) + ".bin");
    }
}
