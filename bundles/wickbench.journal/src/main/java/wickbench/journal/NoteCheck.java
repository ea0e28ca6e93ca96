package wickbench.journal;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Holds the newest checkpoint that stands alone in a file against the tree and the key. */
final class NoteCheck {
    private final StationFolder folder;
    private final Findings findings;
    private final Optional<Note> note;

    /** @param content the file's bytes; empty when it is not there */
    NoteCheck(StationFolder folder, Optional<byte[]> content, Optional<OpenKey> key, Findings findings) {
        this.folder = folder;
        this.findings = findings;
        note = content.flatMap(bytes -> Note.parse(new String(bytes, StandardCharsets.UTF_8)));
        if (content.isPresent() && note.isEmpty()) {
            findings.in(name(), "checkpoint.unreadable", folder.note());
        }
        note.filter(n -> key.isPresent() && !right(n, key.get()))
                .ifPresent(n -> findings.in(name(), "checkpoint.signature", n.size()));
    }

    private boolean right(Note note, OpenKey key) {
        return note.origin().equals(Note.origin(folder.station())) && note.signedBy(key);
    }

    void at(Frontier frontier) {
        note.filter(n -> n.size() == frontier.size() && !n.root().equals(frontier.root()))
                .ifPresent(n -> findings.in(name(), "checkpoint.note", n.size()));
    }

    void end(long size) {
        note.filter(n -> n.size() > size).ifPresent(n -> findings.in(name(), "checkpoint.beyond", n.size()));
    }

    private String name() {
        return folder.note().getFileName().toString();
    }
}
