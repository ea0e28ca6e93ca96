package wickbench.demo;

import java.util.EnumMap;
import java.util.Map;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Strip;

/** What the lines of a strip look like once it has met its load. */
final class StripModel {
    /** A sandwich test line is faint in half of the strips at about twice the limit. */
    private static final Curve STRONG = new Curve(0.35, 5);
    /** A competitive test line is faint in half of the strips at a fifth of the limit. */
    private static final Curve FADING = new Curve(-0.7, 6);

    private static final double LOSS_SLOPE = 6;

    private final Chance chance;

    StripModel(Chance chance) {
        this.chance = chance;
    }

    /**
     * Draws a strip.
     *
     * @param invalidRate how often the control line stays away
     */
    Strip develop(Format format, Plant.Kit kit, Load load, double invalidRate) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        lines.put(LineRole.CONTROL, chance.happens(invalidRate) ? Seen.NOT_SEEN : Seen.SEEN);
        if (format == Format.SANDWICH_HOOK) {
            lines.put(LineRole.HOOK, lost(kit.hookLost().orElseThrow(), load) ? Seen.NOT_SEEN : Seen.SEEN);
        }
        lines.put(LineRole.TEST, format.sandwich() ? appearing(kit, load) : vanishing(kit, load));
        if (chance.happens(kit.damagedRate())) {
            lines.put(chance.oneOf(format.lines()), Seen.DAMAGED);
        }
        return new Strip(format, lines);
    }

    private Seen appearing(Plant.Kit kit, Load load) {
        boolean found = chance.happens(Curve.detecting(kit.slope()).at(load));
        boolean strong = chance.happens(STRONG.at(load));
        boolean hooked = kit.testLost().filter(half -> lost(half, load)).isPresent();
        return !found || hooked ? Seen.NOT_SEEN : strong ? Seen.SEEN : Seen.FAINT;
    }

    private Seen vanishing(Plant.Kit kit, Load load) {
        boolean gone = chance.happens(Curve.detecting(kit.slope()).at(load));
        boolean fading = chance.happens(FADING.at(load));
        return gone ? Seen.NOT_SEEN : fading ? Seen.FAINT : Seen.SEEN;
    }

    private boolean lost(double half, Load load) {
        return chance.happens(new Curve(half, LOSS_SLOPE).at(load));
    }

    /** Returns what a reader answers who overlooks a faint line now and then. */
    Strip seenBy(double missesFaint, Strip strip) {
        Map<LineRole, Seen> answers = new EnumMap<>(LineRole.class);
        for (LineRole role : strip.format().lines()) {
            Seen seen = strip.lines().get(role);
            boolean missed = seen == Seen.FAINT && chance.happens(missesFaint);
            answers.put(role, missed ? Seen.NOT_SEEN : seen);
        }
        return new Strip(strip.format(), answers);
    }
}
