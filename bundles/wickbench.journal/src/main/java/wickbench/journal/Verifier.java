package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.proof.Frontier;
import wickbench.proof.OpenKey;
import wickbench.proof.TreeHash;

/**
 * Reads all of a station again and holds it against its chain, its checkpoints and its key.
 *
 * <p>Trusts nothing that opening found, only the bytes. For one run.
 */
final class Verifier {
    /** Lines between two words to the watcher. */
    private static final int STEP = 4_096;

    private final Layout layout;
    private final StationFolder folder;
    private final Bounds bounds;
    private final Progress progress;
    private final Findings findings;
    private final Frontier frontier = new Frontier();
    private final TreeHash hash = new TreeHash();
    private final long total;
    private long done;

    /**
     * How far to look, because more may be appended meanwhile.
     *
     * @param kept what the open journal holds; empty when it did not open
     * @param root the root it knows
     * @param checkpoints bytes of the list of checkpoints
     * @param note the newest checkpoint alone
     */
    record Bounds(Optional<Kept> kept, Optional<Hash> root, long checkpoints, Optional<byte[]> note) {
        /** Takes the bounds while nobody writes. */
        static Bounds of(StationFolder folder, Optional<Station> station) throws IOException {
            return new Bounds(
                    station.map(Station::kept),
                    station.map(Station::root),
                    folder.checkpoints().toFile().length(),
                    content(folder.note()));
        }

        private static Optional<byte[]> content(Path path) throws IOException {
            try {
                return Optional.of(Files.readAllBytes(path));
            } catch (NoSuchFileException e) {
                return Optional.empty();
            }
        }

        long end(StationFolder folder, long segment) {
            long length = folder.segment(segment).toFile().length();
            return kept.filter(k -> k.segment() <= segment)
                    .map(k -> k.segment() == segment ? Math.min(length, k.length()) : 0)
                    .orElse(length);
        }
    }

    Verifier(Layout layout, StationFolder folder, Bounds bounds, Progress progress) {
        this.layout = layout;
        this.folder = folder;
        this.bounds = bounds;
        this.progress = progress;
        findings = new Findings(folder.station());
        long bytes = 0;
        for (long segment = 0; Files.exists(folder.segment(segment)); segment++) {
            bytes += bounds.end(folder, segment);
        }
        total = bytes;
    }

    Verification run() throws IOException {
        Optional<OpenKey> key = firstKey();
        if (key.isPresent()) {
            compareKey(key.get());
        }
        Optional<Seal> newest = Ending.of(folder.checkpoints(), bounds.checkpoints())
                .line()
                .flatMap(line -> Seal.parse(new String(line, StandardCharsets.UTF_8)));
        long sealed = newest.map(Seal::size).orElse(0L);
        ChainCheck chain = new ChainCheck(folder.station(), sealed, findings);
        NoteCheck note = new NoteCheck(folder, bounds.note(), key, findings);
        try (SealCheck seals = new SealCheck(folder, bounds.checkpoints(), key, findings)) {
            boolean complete = walk(chain, seals, note);
            if (complete) {
                chain.end();
                seals.end();
                note.end(frontier.size(), sealed);
                compareOpen(seals.good());
            }
            return new Verification(frontier.size(), seals.checked(), root(), findings.all(), complete);
        }
    }

    /** Returns the key that the first entry names. */
    private Optional<OpenKey> firstKey() throws IOException {
        if (!Files.exists(folder.segment(0))) {
            return Optional.empty();
        }
        try (Lines lines = new Lines(folder.segment(0), 0, bounds.end(folder, 0))) {
            if (lines.next()
                    && EntryLine.readStrictly("", lines.copy(), Kept.NOTHING.leaf())
                            instanceof Checked.Good<Entry> entry
                    && Founded.read(entry.value()) instanceof Checked.Good<Founded> founded) {
                return Optional.of(founded.value().key());
            }
        }
        findings.at(0, "first.missing");
        return Optional.empty();
    }

    private void compareKey(OpenKey key) throws IOException {
        if (Files.exists(CopyMark.file(folder.folder()))) {
            boolean pinned = CopyMark.read(folder.folder())
                    .filter(mark -> mark.fingerprint().equals(key.fingerprint().hex()))
                    .isPresent();
            if (!pinned) {
                findings.in(folder.station().value(), "copy.key", folder.station());
            }
            return;
        }
        Path path = layout.key(folder.station());
        try {
            boolean same = StationKey.parse(new String(Files.readAllBytes(path), StandardCharsets.UTF_8))
                    .filter(stored -> stored.open().fingerprint().equals(key.fingerprint()))
                    .isPresent();
            if (!same) {
                findings.in(path.getFileName().toString(), "key", path, key.fingerprint());
            }
        } catch (IOException e) {
            // a key that only its owner may read proves nothing to anybody else; the public one stands in the first
            // entry
            if (!Files.exists(path)) {
                findings.in(path.getFileName().toString(), "key", path, key.fingerprint());
            }
        }
    }

    private boolean walk(ChainCheck chain, SealCheck seals, NoteCheck note) throws IOException {
        for (long segment = 0; Files.exists(folder.segment(segment)); segment++) {
            if (!walk(segment, chain, seals, note)) {
                return false;
            }
        }
        return progress.at(total, total);
    }

    private boolean walk(long segment, ChainCheck chain, SealCheck seals, NoteCheck note) throws IOException {
        long lines = 0;
        try (Lines file = new Lines(folder.segment(segment), 0, bounds.end(folder, segment))) {
            while (file.next()) {
                byte[] leaf = hash.leaf(file.buffer(), file.from(), file.length());
                chain.line(file, leaf);
                frontier.add(leaf);
                seals.at(frontier, file.position());
                note.at(frontier);
                lines++;
                if (lines % STEP == 0 && !progress.at(done + file.position(), total)) {
                    return false;
                }
            }
            end(segment, lines, file);
        }
        return true;
    }

    private void end(long segment, long lines, Lines file) {
        Path name = folder.segment(segment).getFileName();
        if (file.left() > 0) {
            findings.at(frontier.size(), "tail.torn", file.left(), name);
        }
        boolean full = lines == StationFolder.SEGMENT;
        // an empty file is what a program leaves that died before its first line there was on the disk
        if (lines > StationFolder.SEGMENT || !full && bounds.end(folder, segment + 1) > 0) {
            findings.in(name.toString(), "segment", name, lines, StationFolder.SEGMENT);
        }
        done += file.position();
    }

    private Hash root() {
        return new Hash(frontier.root().hex());
    }

    /** What lies beyond the newest checkpoint is known only to the program that recorded it. */
    private void compareOpen(long sealed) {
        boolean same = bounds.root().filter(root -> !root.equals(root())).isEmpty();
        if (!same && findings.none()) {
            findings.among(sealed, Math.max(sealed, frontier.size() - 1), "tree.root", sealed);
        }
    }
}
