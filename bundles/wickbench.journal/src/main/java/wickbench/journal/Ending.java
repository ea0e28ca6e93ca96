package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The end of a file of lines.
 *
 * @param line the last whole line
 * @param whole bytes up to and with the last line end; what stands behind them was never finished
 */
record Ending(Optional<byte[]> line, long whole) {
    private static final int BLOCK = 1 << 13;

    /** Looks at the end of a file, or of its first {@code end} bytes; a file that is not there has none. */
    static Ending of(Path path, long end) throws IOException {
        if (!Files.exists(path)) {
            return new Ending(Optional.empty(), 0);
        }
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            long stop = Math.min(end, file.length());
            long whole = lastBreak(file, stop) + 1;
            if (whole == 0) {
                return new Ending(Optional.empty(), 0);
            }
            long start = lastBreak(file, whole - 1) + 1;
            return new Ending(Optional.of(bytes(file, start, whole - 1)), whole);
        }
    }

    /** Tells whether two files, or their beginnings, end in the same place with the same line. */
    boolean isSame(Ending other) {
        return whole == other.whole && Arrays.equals(bytes(line), bytes(other.line));
    }

    private static byte[] bytes(Optional<byte[]> line) {
        return line.orElseGet(() -> new byte[0]);
    }

    /** Returns where the last line end before {@code end} stands; -1 when there is none. */
    private static long lastBreak(RandomAccessFile file, long end) throws IOException {
        for (long stop = end; stop > 0; stop -= BLOCK) {
            long start = Math.max(0, stop - BLOCK);
            byte[] block = bytes(file, start, stop);
            for (int i = block.length - 1; i >= 0; i--) {
                if (block[i] == '\n') {
                    return start + i;
                }
            }
        }
        return -1;
    }

    private static byte[] bytes(RandomAccessFile file, long from, long to) throws IOException {
        byte[] bytes = new byte[Math.toIntExact(to - from)];
        file.seek(from);
        file.readFully(bytes);
        return bytes;
    }
}
