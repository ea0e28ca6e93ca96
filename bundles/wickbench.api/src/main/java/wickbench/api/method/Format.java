package wickbench.api.method;

import java.util.List;
import wickbench.api.words.Coded;

/** How a strip's lines tell of the allergen. */
public enum Format implements Coded {
    /** A test line appears with the allergen; too much of it may make the line vanish unseen. */
    SANDWICH(List.of(LineRole.CONTROL, LineRole.TEST)),
    /** As a sandwich, with a hook line that vanishes when there is too much allergen. */
    SANDWICH_HOOK(List.of(LineRole.CONTROL, LineRole.HOOK, LineRole.TEST)),
    /** The test line vanishes with the allergen. */
    COMPETITIVE(List.of(LineRole.CONTROL, LineRole.TEST));

    private final List<LineRole> lines;

    Format(List<LineRole> lines) {
        this.lines = lines;
    }

    /** Returns the lines of the strip, control first. */
    public List<LineRole> lines() {
        return lines;
    }

    public boolean sandwich() {
        return this != COMPETITIVE;
    }
}
