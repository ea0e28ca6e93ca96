package wickbench.reading;

import java.util.stream.Stream;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Strip;

/** What the lines themselves find. */
final class LineRules {
    private LineRules() {}

    static Stream<Finding> controlNotSeen(Case test) {
        return Stream.of(test.lines().strip().control())
                .filter(Seen.NOT_SEEN::equals)
                .map(seen -> Rule.voids("line.control-not-seen", "control " + seen.code(), "control seen"));
    }

    static Stream<Finding> damaged(Case test) {
        Strip strip = test.lines().strip();
        return strip.format().lines().stream()
                .filter(role -> strip.lines().get(role) == Seen.DAMAGED)
                .map(role -> Rule.voids("line.damaged", role.code() + " damaged", role.code() + " whole"));
    }

    /** Any intensity of a competitive test line must be called by the method; without a call it counts as not seen. */
    static Stream<Finding> faintCompetitive(Case test) {
        return test.readers().stream()
                .filter(Lines::faintUndecided)
                .limit(1)
                .map(lines -> Rule.caution("lines.faint-competitive", "test faint", "a call in the method"));
    }

    static Stream<Finding> readersDisagree(Case test) {
        Strip first = test.reading().strip();
        return test.reading().second().stream()
                .flatMap(second -> first.format().lines().stream()
                        .filter(role -> differ(role, first, second.strip()))
                        .map(role -> disagreement(role, first, second.strip())));
    }

    private static boolean differ(LineRole role, Strip first, Strip second) {
        Seen one = first.lines().get(role);
        Seen other = second.lines().get(role);
        // faint and seen are both there, which is no disagreement
        return one.there() != other.there() || (one == Seen.DAMAGED) != (other == Seen.DAMAGED);
    }

    private static Finding disagreement(LineRole role, Strip first, Strip second) {
        String measured = role.code() + " " + first.lines().get(role).code() + ", second reader "
                + second.lines().get(role).code();
        return Rule.caution("reader.disagreement", measured, "both the same");
    }
}
