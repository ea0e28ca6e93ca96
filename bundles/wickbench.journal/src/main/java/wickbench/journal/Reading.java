package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Predicate;
import wickbench.api.check.Checked;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.proof.TreeHash;

/** Reads the entries of a station and does not believe one that the next contradicts. Safe for several threads. */
final class Reading {
    private final StationFolder folder;
    private final Places places;

    Reading(StationFolder folder) {
        this.folder = folder;
        places = new Places(folder);
    }

    /** Hands over the entries from a place on, until what is kept ends or the reader has enough. */
    void read(Kept kept, long from, Predicate<Entry> reader) {
        Walk walk = new Walk(kept, from);
        try {
            boolean more = true;
            while (more && walk.place < kept.size()) {
                more = walk.segment(reader);
            }
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    Optional<Entry> entry(Kept kept, long place) {
        Last last = new Last();
        if (place < kept.size()) {
            // the entry after it says what this one must be
            read(kept, place, entry -> last.hold(entry, place));
        }
        return Optional.ofNullable(last.entry);
    }

    Optional<String> line(Kept kept, long place) {
        return entry(kept, place).map(entry -> {
            try (Lines lines = from(kept, place)) {
                lines.next();
                return new String(lines.copy(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw unreadable(e);
            }
        });
    }

    /** Takes one line after the other. */
    @FunctionalInterface
    interface LineTaker {
        /** Returns false when it has enough. */
        boolean line(Lines line) throws IOException;
    }

    /** Walks over the lines of a stretch of entries, without a look at what they say. */
    void lines(Kept kept, long from, long to, LineTaker taker) throws IOException {
        long place = from;
        boolean more = true;
        while (more && place < to) {
            long end = Math.min(to, (StationFolder.segmentOf(place) + 1) * StationFolder.SEGMENT);
            try (Lines lines = from(kept, place)) {
                while (more && place < end) {
                    if (!lines.next()) {
                        throw Say.tampered("entry.missing", place);
                    }
                    more = taker.line(lines);
                    place++;
                }
            }
        }
    }

    private Lines from(Kept kept, long place) throws IOException {
        long segment = StationFolder.segmentOf(place);
        long end = segment == kept.segment() ? kept.length() : Long.MAX_VALUE;
        return new Lines(folder.segment(segment), places.start(kept, place), end);
    }

    private Refusal unreadable(IOException e) {
        return Say.failed(Say.words("failed.read", folder.folder(), EntryFiles.reason(e)));
    }

    private static final class Last {
        private Entry entry;

        boolean hold(Entry next, long place) {
            entry = next.ref().seq() == place ? next : entry;
            return next.ref().seq() == place;
        }
    }

    private final class Walk {
        private final Kept kept;
        private final TreeHash hash = new TreeHash();
        private long place;
        private Hash before = Kept.NOTHING.leaf();
        private boolean known;

        Walk(Kept kept, long from) {
            this.kept = kept;
            place = from;
            known = from == 0;
        }

        /** Reads on to the end of a segment; false when the reader has enough. */
        boolean segment(Predicate<Entry> reader) throws IOException {
            long segment = StationFolder.segmentOf(place);
            boolean more = true;
            try (Lines lines = from(kept, place)) {
                while (more && StationFolder.segmentOf(place) == segment && place < kept.size()) {
                    if (!lines.next()) {
                        throw Say.tampered("entry.missing", place);
                    }
                    more = reader.test(entry(lines));
                    place++;
                }
            }
            return more;
        }

        private Entry entry(Lines lines) {
            Hash leaf = Hash.of(hash.leaf(lines.buffer(), lines.from(), lines.length()));
            EntryRef ref = new EntryRef(folder.station(), place);
            if (EntryLine.read(ref.toString(), lines.copy(), leaf) instanceof Checked.Good<Entry> good) {
                return chained(good.value(), ref);
            }
            throw Say.tampered("entry.unreadable", ref);
        }

        private Entry chained(Entry entry, EntryRef ref) {
            if (!entry.ref().equals(ref)) {
                throw Say.tampered("entry.misplaced", ref, entry.ref());
            }
            if (known && !entry.prev().equals(before)) {
                throw Say.tampered("entry.chain", ref.seq() - 1, ref.seq());
            }
            if (place == kept.size() - 1 && !entry.leaf().equals(kept.leaf())) {
                throw Say.tampered("entry.changed", ref);
            }
            before = entry.leaf();
            known = true;
            return entry;
        }
    }
}
