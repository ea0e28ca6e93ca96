package wickbench.journal;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * Walks over the lines of a stretch of a file without copying them; for one thread.
 *
 * <p>Not a channel, for one interrupted thread would close it.
 */
final class Lines implements Closeable {
    /** No line of ours is longer, and no stranger's may fill the memory. */
    static final int LONGEST = 1 << 24;

    private static final int BUFFER = 1 << 18;
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long ONES = 0x0101_0101_0101_0101L;
    private static final long EIGHT_LINE_ENDS = '\n' * ONES;
    private final Optional<RandomAccessFile> file;
    private final long end;
    private byte[] buffer;
    /** Place of the buffer's first byte in the file. */
    private long base;

    private int filled;
    private int from;
    private int to;

    /**
     * @param start where the first line begins
     * @param end where the stretch ends; a file that is shorter ends it earlier
     */
    Lines(Path path, long start, long end) throws IOException {
        RandomAccessFile opened = new RandomAccessFile(path.toFile(), "r");
        opened.seek(start);
        file = Optional.of(opened);
        base = start;
        this.end = Math.min(end, opened.length());
        buffer = new byte[(int) Math.max(Long.BYTES, Math.min(BUFFER, this.end - start))];
        to = -1;
    }

    /** Walks over lines that are in memory already. */
    Lines(byte[] bytes) {
        file = Optional.empty();
        end = bytes.length;
        buffer = bytes;
        filled = bytes.length;
        to = -1;
    }

    /** Goes to the next line; false when only bytes without line end, or too many, are left. */
    boolean next() throws IOException {
        from = to + 1;
        int looked = from;
        while (true) {
            int at = lineEnd(buffer, looked, filled);
            if (at < filled) {
                to = at;
                return true;
            }
            int waiting = filled - from;
            if (waiting > LONGEST || !fill()) {
                to = from - 1;
                return false;
            }
            looked = from + waiting;
        }
    }

    /** Returns where the next line end stands, eight bytes at a time; {@code end} when there is none. */
    private static int lineEnd(byte[] bytes, int from, int end) {
        int at = from;
        while (at + Long.BYTES <= end) {
            long word = (long) EIGHT.get(bytes, at) ^ EIGHT_LINE_ENDS;
            // the high bit of the lowest zero byte, and of none below it
            long zeros = (word - ONES) & ~word & ONES << 7;
            if (zeros != 0) {
                return at + Long.numberOfTrailingZeros(zeros) / Byte.SIZE;
            }
            at += Long.BYTES;
        }
        while (at < end && bytes[at] != '\n') {
            at++;
        }
        return at;
    }

    /** Moves the line begun to the buffer's start and reads on. */
    private boolean fill() throws IOException {
        int waiting = filled - from;
        int more = (int) Math.min(buffer.length, end - base - filled);
        if (more <= 0) {
            return false;
        }
        byte[] target = waiting > buffer.length / 2 ? new byte[2 * buffer.length] : buffer;
        System.arraycopy(buffer, from, target, 0, waiting);
        buffer = target;
        base += from;
        from = 0;
        filled = waiting;
        int read = file.orElseThrow().read(buffer, filled, Math.min(more, buffer.length - filled));
        if (read < 0) {
            throw new EOFException("shorter than a moment ago");
        }
        filled += read;
        return true;
    }

    /** Tells whether the line holds NUL: where a sync program has not yet filled in what is there, the file system shows it. */
    boolean holdsNul() {
        for (int at = from; at < to; at++) {
            if (buffer[at] == 0) {
                return true;
            }
        }
        return false;
    }

    byte[] buffer() {
        return buffer;
    }

    /** Returns where the line begins in {@link #buffer}. */
    int from() {
        return from;
    }

    /** Returns how long the line is without its line end. */
    int length() {
        return to - from;
    }

    byte[] copy() {
        return Arrays.copyOfRange(buffer, from, to);
    }

    /** Returns where in the file the next line begins. */
    long position() {
        return base + to + 1;
    }

    /** Returns how many bytes of the stretch lie behind the lines walked over. */
    long left() {
        return end - position();
    }

    @Override
    public void close() throws IOException {
        if (file.isPresent()) {
            file.get().close();
        }
    }
}
