package wickbench.console;

import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.console.door.Asking;

/**
 * Asks the person at the terminal without showing the answer, or reads standard input line by line where that was wanted.
 *
 * <p>A call that is tried again gets the same answers again, so that nobody is asked twice.
 */
final class Keyboard implements Asking {
    private final Optional<Reader> lines;
    private final Optional<Console> console;
    private final List<char[]> answers = new ArrayList<>();
    private int asked;

    private Keyboard(Optional<Reader> lines, Optional<Console> console) {
        this.lines = lines;
        this.console = console;
    }

    /** Reads standard input; the terminal is left alone. */
    static Keyboard lines(InputStream in) {
        return new Keyboard(Optional.of(new InputStreamReader(in, StandardCharsets.UTF_8)), Optional.empty());
    }

    static Keyboard terminal() {
        return new Keyboard(Optional.empty(), Optional.ofNullable(System.console()));
    }

    /** Starts over with the answers that were given. */
    void again() {
        asked = 0;
    }

    @Override
    public Optional<char[]> secret(String prompt) {
        if (asked == answers.size()) {
            Optional<char[]> answer =
                    lines.isPresent() ? line(lines.get()) : console.map(open -> open.readPassword("%s: ", prompt));
            answer.ifPresent(answers::add);
        }
        return asked < answers.size() ? Optional.of(answers.get(asked++).clone()) : Optional.empty();
    }

    private static Optional<char[]> line(Reader reader) {
        try {
            StringBuilder line = new StringBuilder();
            int next = reader.read();
            boolean any = next >= 0;
            for (; next >= 0 && next != '\n'; next = reader.read()) {
                line.append((char) next);
            }
            return any ? Optional.of(withoutReturn(line).toString().toCharArray()) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CharSequence withoutReturn(StringBuilder line) {
        int end = line.length();
        return end > 0 && line.charAt(end - 1) == '\r' ? line.subSequence(0, end - 1) : line;
    }
}
