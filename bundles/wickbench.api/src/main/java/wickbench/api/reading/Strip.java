package wickbench.api.reading;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;

/**
 * A strip as one reader saw it, every line answered.
 *
 * @param lines an answer for each line of the format, and no other
 */
public record Strip(Format format, Map<LineRole, Seen> lines) {
    public Strip {
        if (!new HashSet<>(format.lines()).equals(lines.keySet())) {
            throw new IllegalArgumentException("a " + format.code() + " strip has the lines " + format.lines()
                    + ", answered were " + lines.keySet());
        }
        lines = Map.copyOf(new EnumMap<>(lines));
    }

    public Seen control() {
        return lines.get(LineRole.CONTROL);
    }

    public Seen test() {
        return lines.get(LineRole.TEST);
    }

    /** Tells whether the strip has a hook line that is not there. */
    public boolean hookLost() {
        return lines.get(LineRole.HOOK) == Seen.NOT_SEEN;
    }
}
