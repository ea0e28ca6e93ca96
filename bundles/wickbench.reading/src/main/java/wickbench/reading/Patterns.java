package wickbench.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;

/** Every way in which the lines of a strip can be answered, with what it says. */
public final class Patterns {
    private Patterns() {}

    /**
     * One way of answering, read in time and with nothing against it.
     *
     * @param sign only of an Invalid: it still hints at allergen
     */
    public record Pattern(Strip strip, Outcome outcome, boolean sign) {
        /** Tells whether every line is simply seen or not seen, as on a bench card. */
        public boolean plain() {
            return strip.lines().values().stream().allMatch(seen -> seen == Seen.SEEN || seen == Seen.NOT_SEEN);
        }
    }

    /** Returns all patterns of a format whose method does not say how a faint test line is called. */
    public static List<Pattern> of(Format format) {
        return of(format, Optional.empty());
    }

    /**
     * Returns all patterns of a format.
     *
     * @param faintTest how the method calls a faint test line of a competitive strip
     */
    public static List<Pattern> of(Format format, Optional<Seen> faintTest) {
        return answers(format.lines()).stream()
                .map(answers -> pattern(new Lines(new Strip(format, answers), faintTest)))
                .toList();
    }

    private static Pattern pattern(Lines lines) {
        Outcome outcome = lines.outcome();
        return new Pattern(lines.strip(), outcome, outcome == Outcome.INVALID && lines.sign());
    }

    private static List<Map<LineRole, Seen>> answers(List<LineRole> roles) {
        List<Map<LineRole, Seen>> found = List.of(new EnumMap<>(LineRole.class));
        for (LineRole role : roles) {
            found = eachAnswered(found, role);
        }
        return found;
    }

    private static List<Map<LineRole, Seen>> eachAnswered(List<Map<LineRole, Seen>> before, LineRole role) {
        List<Map<LineRole, Seen>> after = new ArrayList<>();
        for (Map<LineRole, Seen> some : before) {
            for (Seen seen : Seen.values()) {
                Map<LineRole, Seen> more = new EnumMap<>(some);
                more.put(role, seen);
                after.add(more);
            }
        }
        return after;
    }
}
