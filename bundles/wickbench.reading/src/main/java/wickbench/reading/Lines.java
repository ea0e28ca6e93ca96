package wickbench.reading;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;

/**
 * What the lines say by themselves, whatever the times and the sample.
 *
 * @param faintTest how the method calls a faint test line of a competitive strip
 */
record Lines(Strip strip, Optional<Seen> faintTest) {
    /** From harmless to cautious; a line that two readers see differently counts as the later of their answers. */
    private static final List<Seen> BETTER_THERE = List.of(Seen.SEEN, Seen.FAINT, Seen.NOT_SEEN, Seen.DAMAGED);

    private static final List<Seen> BETTER_AWAY = List.of(Seen.NOT_SEEN, Seen.FAINT, Seen.SEEN, Seen.DAMAGED);

    Outcome outcome() {
        if (!strip.control().there() || strip.lines().containsValue(Seen.DAMAGED)) {
            return Outcome.INVALID;
        }
        if (strip.hookLost()) {
            return Outcome.POSITIVE_ABOVE_RANGE;
        }
        return allergen() ? Outcome.POSITIVE : Outcome.NEGATIVE;
    }

    /** Tells whether a strip that proves nothing still hints at allergen. */
    boolean sign() {
        return testSign() || strip.hookLost() || blank();
    }

    /** Tells whether the strip leaves the call of a faint test line open. */
    boolean faintUndecided() {
        return !strip.format().sandwich() && strip.test() == Seen.FAINT && faintTest.isEmpty();
    }

    /** Joins two readers' answers, each line by the more cautious one. */
    Lines cautious(Lines other) {
        Map<LineRole, Seen> joined = new EnumMap<>(LineRole.class);
        strip.lines()
                .forEach((role, seen) ->
                        joined.put(role, worse(role, seen, other.strip.lines().get(role))));
        return new Lines(new Strip(strip.format(), joined), faintTest);
    }

    private Seen worse(LineRole role, Seen one, Seen other) {
        boolean away = role == LineRole.TEST && strip.format().sandwich();
        List<Seen> order = away ? BETTER_AWAY : BETTER_THERE;
        return order.get(Math.max(order.indexOf(one), order.indexOf(other)));
    }

    private boolean testSign() {
        // a competitive test line is also absent when nothing ran up the strip
        return allergen() && (strip.format().sandwich() || strip.control().there());
    }

    private boolean allergen() {
        return strip.format().sandwich() ? strip.test().there() : calledTest() == Seen.NOT_SEEN;
    }

    private Seen calledTest() {
        return strip.test() == Seen.FAINT ? faintTest.orElse(Seen.NOT_SEEN) : strip.test();
    }

    private boolean blank() {
        return strip.lines().values().stream().allMatch(Seen.NOT_SEEN::equals);
    }
}
