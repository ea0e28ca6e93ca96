package wickbench.stock.log;

import java.io.BufferedInputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import wickbench.api.progress.Progress;

/** Reads a file whose newest row comes first: its lines are turned round on the disk, so that any size will do. */
final class Reversed {
    private static final int BLOCK = 1 << 20;

    private Reversed() {}

    /** What reads a file in its own order. */
    @FunctionalInterface
    interface Rows {
        boolean read(Path from, long first, LogFile.Listener listener, Progress progress) throws IOException;
    }

    /** @param first the line of the first row; what stands before it is left away */
    static boolean read(Path path, long first, Progress progress, Rows rows, LogFile.Listener listener)
            throws IOException {
        Path turned = Files.createTempFile("wickbench", ".log");
        try {
            if (LogLines.wide(path)) {
                narrowed(path, first, turned);
            } else {
                turn(path, start(path, first), turned);
            }
            return rows.read(turned, 1, listener, progress);
        } finally {
            Files.delete(turned);
        }
    }

    /** Characters of two bytes are made bytes first; only digits, marks and a few words matter. */
    private static void narrowed(Path path, long first, Path turned) throws IOException {
        Path narrow = Files.createTempFile("wickbench", ".log");
        try {
            try (LogLines lines = LogLines.open(path);
                    BufferedWriter out = Files.newBufferedWriter(narrow, StandardCharsets.ISO_8859_1)) {
                Optional<String> line = lines.next();
                while (line.isPresent()) {
                    out.write(line.get().replaceAll("[^\\x00-\\xff]", "?"));
                    out.write('\n');
                    line = lines.next();
                }
            }
            turn(narrow, start(narrow, first), turned);
        } finally {
            Files.delete(narrow);
        }
    }

    private static long start(Path path, long first) throws IOException {
        try (var in = new BufferedInputStream(Files.newInputStream(path))) {
            long at = 0;
            for (long line = 1; line < first; at++) {
                line += in.read() == '\n' ? 1 : 0;
            }
            return at;
        }
    }

    private static void turn(Path from, long start, Path to) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(from.toFile(), "r");
                BufferedWriter out = Files.newBufferedWriter(to, StandardCharsets.ISO_8859_1)) {
            byte[] tail = {};
            for (long end = file.length(); end > start; ) {
                int length = (int) Math.min(BLOCK, end - start);
                end -= length;
                byte[] block = new byte[length + tail.length];
                file.seek(end);
                file.readFully(block, 0, length);
                System.arraycopy(tail, 0, block, length, tail.length);
                tail = lines(block, end == start, out);
                if (tail.length > LogLines.LONGEST) {
                    // the reader of lines knows its number and says so
                    refuseLongLine(from);
                }
            }
        }
    }

    private static void refuseLongLine(Path path) throws IOException {
        try (LogLines lines = LogLines.open(path)) {
            while (lines.next().isPresent()) {
                // until it refuses
            }
        }
        throw new IllegalStateException(path + " had a line too long and now has none");
    }

    /** Writes the lines of a block from the last on; returns what may be the end of an earlier line. */
    private static byte[] lines(byte[] block, boolean start, BufferedWriter out) throws IOException {
        int end = block.length;
        for (int i = block.length - 1; i >= 0; i--) {
            if (block[i] == '\n') {
                line(block, i + 1, end, out);
                end = i;
            }
        }
        if (start) {
            line(block, 0, end, out);
            return new byte[0];
        }
        return Arrays.copyOf(block, end);
    }

    private static void line(byte[] block, int from, int to, BufferedWriter out) throws IOException {
        String line = new String(block, from, to - from, StandardCharsets.ISO_8859_1).replace("\r", "");
        if (!line.isEmpty()) {
            out.write(line);
            out.write('\n');
        }
    }
}
