package wickbench.journal;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.proof.Frontier;
import wickbench.proof.Note;
import wickbench.proof.TreeHash;

/**
 * Opens a station: believes what the newest checkpoint covers, reads what came after it, and finds a torn end.
 *
 * <p>Changes nothing. An end is torn when its last line has no line end or when it holds NUL, which no line of ours does but
 * which a file system leaves where it never wrote. Everything else that is wrong is tampering.
 */
final class Opening {
    private final StationFolder folder;
    private final TreeHash hash = new TreeHash();
    private final List<SetAside> setAside = new ArrayList<>();
    private Frontier frontier = new Frontier();
    private Kept kept = Kept.NOTHING;
    private Optional<Founded> founded = Optional.empty();

    private Opening(StationFolder folder) {
        this.folder = folder;
    }

    static Opened open(StationFolder folder) throws IOException {
        return new Opening(folder).open();
    }

    private Opened open() throws IOException {
        Optional<Seal> seal = newestSeal();
        if (seal.isPresent()) {
            founded = Optional.of(first());
            believe(seal.get());
        }
        readOn();
        checkNote(seal);
        return new Opened(founded, kept, frontier, seal, setAside);
    }

    private Optional<Seal> newestSeal() throws IOException {
        Ending ending = Ending.of(folder.checkpoints(), Long.MAX_VALUE);
        long whole = ending.whole();
        while (ending.line().filter(Opening::holdsNul).isPresent()) {
            whole -= ending.line().get().length + 1;
            ending = Ending.of(folder.checkpoints(), whole);
        }
        byte[] torn = behind(folder.checkpoints(), whole);
        if (torn.length > 0) {
            setAside.add(new SetAside(folder.checkpoints(), whole, 0, torn));
        }
        return ending.line()
                .map(line -> Seal.parse(new String(line, StandardCharsets.UTF_8))
                        .orElseThrow(() -> Say.tampered("checkpoint.unreadable", folder.checkpoints())));
    }

    private static byte[] behind(Path path, long position) throws IOException {
        if (!Files.exists(path)) {
            return new byte[0];
        }
        try (InputStream file = new FileInputStream(path.toFile())) {
            file.skipNBytes(position);
            return file.readAllBytes();
        }
    }

    /** Reads the first entry, which names the key that the checkpoints are checked by. */
    private Founded first() throws IOException {
        if (!Files.exists(folder.segment(0))) {
            throw Say.tampered("entry.missing", 0);
        }
        try (Lines lines = new Lines(folder.segment(0), 0, Long.MAX_VALUE)) {
            if (!lines.next()) {
                throw Say.tampered("entry.missing", 0);
            }
            return founded(strictly(lines, 0));
        }
    }

    private static Founded founded(Entry entry) {
        if (Founded.read(entry) instanceof Checked.Good<Founded> good) {
            return good.value();
        }
        throw Say.tampered("first", entry.ref());
    }

    /** Goes to where a checkpoint ends. */
    private void believe(Seal seal) throws IOException {
        if (!seal.holds(founded.orElseThrow().key(), folder.station())) {
            throw Say.tampered("checkpoint.signature", seal.size());
        }
        frontier = seal.startingPoint();
        kept = new Kept(seal.size(), Kept.NOTHING.leaf(), seal.offset());
        Ending ending = Ending.of(folder.segment(kept.segment()), seal.offset());
        if (ending.whole() != seal.offset() || ending.line().isEmpty()) {
            throw Say.tampered("checkpoint.beyond", seal.size());
        }
        byte[] line = ending.line().get();
        kept = new Kept(seal.size(), Hash.of(hash.leaf(line)), seal.offset());
        if (!lastIsSealed(seal, line)) {
            throw Say.tampered("entry.changed", new EntryRef(folder.station(), seal.size() - 1));
        }
    }

    /** Tells whether the last line under a checkpoint has its place and, where the frontier shows it, its hash. */
    private boolean lastIsSealed(Seal seal, byte[] line) {
        EntryRef ref = new EntryRef(folder.station(), seal.size() - 1);
        boolean single = seal.size() % 2 == 1;
        return (!single
                        || seal.frontier()
                                .get(seal.frontier().size() - 1)
                                .hex()
                                .equals(kept.leaf().hex()))
                && EntryLine.readStrictly(ref.toString(), line, kept.leaf()) instanceof Checked.Good<Entry> good
                && good.value().ref().equals(ref);
    }

    private void readOn() throws IOException {
        long segment = kept.segment();
        readOn(segment, kept.length());
        while (Files.exists(folder.segment(segment + 1))) {
            segment++;
            readOn(segment, 0);
        }
    }

    private void readOn(long segment, long start) throws IOException {
        if (!Files.exists(folder.segment(segment))) {
            return;
        }
        if (kept.size() < segment * StationFolder.SEGMENT
                && folder.segment(segment).toFile().length() > 0) {
            // of one append over two files the first never reached the disk, so the second was never acknowledged
            // either
            tear(segment, 0);
        }
        try (Lines lines = new Lines(folder.segment(segment), start, Long.MAX_VALUE)) {
            long position = start;
            while (setAside.stream().noneMatch(this::isEntries) && lines.next()) {
                if (holdsNul(lines.copy())) {
                    tear(segment, position);
                    return;
                }
                accept(segment, lines);
                position = lines.position();
            }
            if (lines.left() > 0 && !torn(segment)) {
                tear(segment, position);
            }
        }
    }

    private boolean torn(long segment) {
        return setAside.stream().anyMatch(torn -> torn.file().equals(folder.segment(segment)));
    }

    private boolean isEntries(SetAside torn) {
        return !torn.file().equals(folder.checkpoints());
    }

    private static boolean holdsNul(byte[] line) {
        for (byte b : line) {
            if (b == 0) {
                return true;
            }
        }
        return false;
    }

    private void tear(long segment, long position) throws IOException {
        Path path = folder.segment(segment);
        setAside.add(new SetAside(path, position, kept.size(), behind(path, position)));
    }

    private void accept(long segment, Lines lines) {
        Entry entry = strictly(lines, kept.size());
        if (StationFolder.segmentOf(kept.size()) != segment) {
            throw Say.tampered("entry.file", entry.ref());
        }
        if (!entry.prev().equals(kept.leaf())) {
            throw Say.tampered("entry.chain", kept.size() - 1, kept.size());
        }
        if (kept.size() == 0) {
            founded = Optional.of(founded(entry));
        }
        frontier.add(entry.leaf().bytes());
        kept = new Kept(kept.size() + 1, entry.leaf(), lines.position());
    }

    private Entry strictly(Lines lines, long place) {
        EntryRef ref = new EntryRef(folder.station(), place);
        byte[] line = lines.copy();
        if (EntryLine.readStrictly(ref.toString(), line, Hash.of(hash.leaf(line)))
                instanceof Checked.Good<Entry> good) {
            if (good.value().ref().equals(ref)) {
                return good.value();
            }
            throw Say.tampered("entry.misplaced", ref, good.value().ref());
        }
        throw Say.tampered("entry.unreadable", ref);
    }

    /** The note is written after the line of its checkpoint, so it may lag behind but never be ahead. */
    private void checkNote(Optional<Seal> seal) throws IOException {
        if (!Files.exists(folder.note())) {
            return;
        }
        Note note = Note.parse(new String(Files.readAllBytes(folder.note()), StandardCharsets.UTF_8))
                .orElseThrow(() -> Say.tampered("checkpoint.unreadable", folder.note()));
        if (founded.filter(f -> note.signedBy(f.key())).isEmpty()) {
            throw Say.tampered("checkpoint.signature", note.size());
        }
        if (note.size() > seal.map(Seal::size).orElse(0L)) {
            throw Say.tampered("checkpoint.missing", note.size());
        }
    }
}
