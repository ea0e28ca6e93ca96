package wickbench.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;

/**
 * Bytes at the end of a file that were never acknowledged.
 *
 * @param file where they stood
 * @param kept bytes of that file before them
 * @param place the place the entry would have had
 */
record SetAside(Path file, long kept, long place, byte[] content) {
    static final String KIND = "journal.tail-set-aside";
    static final int V = 1;

    /** Moves the bytes to a file of their own and cuts them off; forced, so that they cannot come back. */
    void move(Disk disk, StationFolder folder) throws IOException {
        disk.place(target(folder), content);
        try (Disk.Growing growing = disk.grow(file)) {
            growing.truncate(kept);
            growing.force();
        }
    }

    private Path target(StationFolder folder) {
        String what = file.equals(folder.checkpoints()) ? "checkpoint" : String.format(Locale.ROOT, "%09d", place);
        return folder.torn(what, hash());
    }

    private Hash hash() {
        return Hash.ofContent(content);
    }

    Json.Obj body(StationFolder folder) {
        return Json.object()
                .with("file", target(folder).getFileName().toString())
                .with("from", file.getFileName().toString())
                .with("place", place)
                .with("bytes", content.length)
                .with("sha256", hash().hex());
    }

    String notice(StationFolder folder) {
        return Say.words(
                "torn", content.length, file.getFileName(), target(folder).getFileName());
    }

    String noticeReadOnly() {
        return Say.words("torn.read-only", content.length, file.getFileName());
    }
}
