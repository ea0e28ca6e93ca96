package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import wickbench.proof.OpenKey;

/** Reads the list of checkpoints some lines ahead, so that other cores check signatures meanwhile. */
final class SealLines implements Closeable {
    /** Checking takes about as long as walking over a thousand entries; more than these need not wait. */
    private static final int AHEAD = 64;
    /** A stranger's lines may be longer than ours, and may not fill the memory. */
    private static final int BYTES_AHEAD = 1 << 20;

    private final StationFolder folder;
    private final Optional<OpenKey> key;
    private final List<Lines> file;
    private final Deque<SealLine> ahead = new ArrayDeque<>();
    private long bytesAhead;
    private long numbered;

    /** @param length bytes of the list to look at */
    SealLines(StationFolder folder, long length, Optional<OpenKey> key) throws IOException {
        this.folder = folder;
        this.key = key;
        file = Files.exists(folder.checkpoints()) ? List.of(new Lines(folder.checkpoints(), 0, length)) : List.of();
    }

    /** Returns the next line; empty behind the last. */
    Optional<SealLine> next() throws IOException {
        while (ahead.size() < AHEAD
                && bytesAhead < BYTES_AHEAD
                && !file.isEmpty()
                && file.get(0).next()) {
            SealLine line = new SealLine(++numbered, file.get(0).copy(), key, folder.station());
            bytesAhead += line.length();
            ahead.add(line);
            ForkJoinPool.commonPool().execute(line);
        }
        Optional<SealLine> next = Optional.ofNullable(ahead.poll());
        next.ifPresent(line -> {
            bytesAhead -= line.length();
            helpUntilRead(line);
        });
        return next;
    }

    /** Checks what is farthest ahead, rather than wait for a line that another core has in hand. */
    private void helpUntilRead(SealLine wanted) {
        Iterator<SealLine> farthest = ahead.descendingIterator();
        while (wanted.inHand() && farthest.hasNext()) {
            farthest.next().read();
        }
    }

    /** Returns how many bytes stand behind the last line. */
    long left() {
        return file.isEmpty() ? 0 : file.get(0).left();
    }

    @Override
    public void close() throws IOException {
        for (Lines lines : file) {
            lines.close();
        }
    }
}
