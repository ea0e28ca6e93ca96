package wickbench.journal;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;

/** Where the files of one station lie. */
record StationFolder(StationId station, Path folder) {
    /** Entries in a segment, so that the place of an entry gives its file by a division. */
    static final int SEGMENT = 10_000;

    private static final Pattern NAME = Pattern.compile("entries-([0-9]{6,})\\.jsonl");

    static long segmentOf(long place) {
        return place / SEGMENT;
    }

    Path segment(long number) {
        return folder.resolve(String.format(Locale.ROOT, "entries-%06d.jsonl", number));
    }

    /** Returns which segment a file is by its name; empty when it is none. */
    static Optional<Long> number(String name) {
        Matcher form = NAME.matcher(name);
        return form.matches() ? Optional.of(Long.valueOf(form.group(1))) : Optional.empty();
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
