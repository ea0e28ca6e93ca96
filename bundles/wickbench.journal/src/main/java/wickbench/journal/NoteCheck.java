package wickbench.journal;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import wickbench.proof.Frontier;
import wickbench.proof.Note;
import wickbench.proof.OpenKey;

/** Holds the newest checkpoint that stands alone in a file against the tree and the key. */
final class NoteCheck {
    private final StationFolder folder;
    private final Findings findings;
    private final Optional<Note> note;
    private final long size;

    /** @param content the file's bytes; empty when it is not there */
    NoteCheck(StationFolder folder, Optional<byte[]> content, Optional<OpenKey> key, Findings findings) {
        this.folder = folder;
        this.findings = findings;
        note = content.flatMap(bytes -> Note.parse(new String(bytes, StandardCharsets.UTF_8)));
        size = note.map(Note::size).orElse(-1L);
        if (content.isPresent() && note.isEmpty()) {
            findings.in(name(), "checkpoint.unreadable", folder.note());
        }
        note.filter(n -> key.isPresent() && !right(n, key.get()))
                .ifPresent(n -> findings.in(name(), "checkpoint.signature", n.size()));
    }

    private boolean right(Note note, OpenKey key) {
        return note.origin().equals(Origin.of(folder.station())) && note.signedBy(key);
    }

    void at(Frontier frontier) {
        if (frontier.size() == size
                && note.filter(n -> n.root().equals(frontier.root())).isEmpty()) {
            findings.in(name(), "checkpoint.note", size);
        }
    }

    /** @param listed entries that the newest checkpoint in the list covers */
    void end(long entries, long listed) {
        if (size > entries) {
            findings.in(name(), "checkpoint.beyond", size);
        } else if (size > listed) {
            findings.in(name(), "checkpoint.missing", size);
        }
    }

    private String name() {
        return folder.note().getFileName().toString();
    }
}
