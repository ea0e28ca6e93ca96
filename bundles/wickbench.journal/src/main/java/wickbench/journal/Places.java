package wickbench.journal;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Knows where in its segment a line begins; remembers the segments asked for last. Safe for several threads. */
final class Places {
    /** Of 80 kB each: those of a million entries. */
    private static final int REMEMBERED = 100;

    private final StationFolder folder;
    private final Map<Long, Starts> segments = new LinkedHashMap<>(REMEMBERED, 1, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Starts> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** The beginnings of a segment's lines, and the end of the last. */
    private static final class Starts {
        private long[] at = new long[64];
        private int lines;

        void add(long end) {
            if (lines + 1 == at.length) {
                at = Arrays.copyOf(at, 2 * at.length);
            }
            at[++lines] = end;
        }
    }

    Places(StationFolder folder) {
        this.folder = folder;
    }

    /** Returns where the line at a place begins, in bytes from its segment's start. */
    synchronized long start(Kept kept, long place) throws IOException {
        int line = (int) (place % StationFolder.SEGMENT);
        if (line == 0) {
            return 0;
        }
        long segment = StationFolder.segmentOf(place);
        Starts starts = segments.computeIfAbsent(segment, n -> new Starts());
        if (starts.lines < line) {
            extend(starts, kept, segment);
        }
        if (starts.lines < line) {
            throw Say.tampered("entry.missing", place);
        }
        return starts.at[line];
    }

    private void extend(Starts starts, Kept kept, long segment) throws IOException {
        long end = segment == kept.segment() ? kept.length() : Long.MAX_VALUE;
        try (Lines lines = new Lines(folder.segment(segment), starts.at[starts.lines], end)) {
            while (lines.next()) {
                starts.add(lines.position());
            }
        }
    }
}
