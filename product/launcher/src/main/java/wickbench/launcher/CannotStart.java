package wickbench.launcher;

import java.util.List;

/** The product cannot start; each line names one thing that is missing or broken. */
public final class CannotStart extends Exception {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // an exception is never stored here, and List.of is serializable anyway
    private final List<String> lines;

    CannotStart(List<String> lines) {
        super(String.join("; ", lines));
        this.lines = List.copyOf(lines);
    }

    CannotStart(String line) {
        this(List.of(line));
    }

    public List<String> lines() {
        return lines;
    }
}
