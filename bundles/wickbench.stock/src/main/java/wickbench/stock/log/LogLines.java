package wickbench.stock.log;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The lines of a file, one at a time, however large it is.
 *
 * <p>Only digits, marks and a few words matter, so bytes that are no UTF-16 are taken one by one; no file is refused for its
 * encoding. A line of more than {@value #LONGEST} characters or with a NUL is.
 */
final class LogLines implements AutoCloseable {
    static final int LONGEST = 8192;

    private final String file;
    private final BufferedReader reader;
    private long number;

    private LogLines(String file, BufferedReader reader) {
        this.file = file;
        this.reader = reader;
    }

    static LogLines open(Path path) throws IOException {
        InputStream bytes = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        String name = path.getFileName().toString();
        return new LogLines(name, new BufferedReader(new InputStreamReader(bytes, charset(bytes)), 1 << 16));
    }

    /** Tells whether a file is written two bytes a character, so that no byte alone ends a line. */
    static boolean wide(Path path) throws IOException {
        try (InputStream bytes = new BufferedInputStream(Files.newInputStream(path))) {
            return charset(bytes) == StandardCharsets.UTF_16;
        }
    }

    private static Charset charset(InputStream bytes) throws IOException {
        bytes.mark(3);
        byte[] start = bytes.readNBytes(3);
        bytes.reset();
        boolean utf16 = start.length >= 2
                && (start[0] == (byte) 0xFE && start[1] == (byte) 0xFF
                        || start[0] == (byte) 0xFF && start[1] == (byte) 0xFE);
        if (!utf16 && start.length == 3 && start[0] == (byte) 0xEF && start[1] == (byte) 0xBB) {
            bytes.skipNBytes(3);
        }
        return utf16 ? StandardCharsets.UTF_16 : StandardCharsets.ISO_8859_1;
    }

    /** Returns the next line without its end; empty at the end of the file. */
    Optional<String> next() {
        StringBuilder line = new StringBuilder();
        try {
            int c = reader.read();
            if (c < 0) {
                return Optional.empty();
            }
            number++;
            while (c >= 0 && c != '\n' && c != '\r') {
                add(line, c);
                c = reader.read();
            }
            afterReturn(c);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Optional.of(line.toString());
    }

    private void add(StringBuilder line, int c) {
        if (c == 0) {
            throw LogTrouble.at(file, number, "nul");
        }
        if (line.length() == LONGEST) {
            throw LogTrouble.at(file, number, "long", LONGEST);
        }
        line.append((char) c);
    }

    private void afterReturn(int c) throws IOException {
        if (c == '\r') {
            reader.mark(1);
            if (reader.read() != '\n') {
                reader.reset();
            }
        }
    }

    /** Returns the number of the line returned last, from 1. */
    long number() {
        return number;
    }

    String file() {
        return file;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
