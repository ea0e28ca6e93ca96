package wickbench.demo;

import java.time.Instant;

/** How much allergen is where a sample is taken: log-normal around what a point usually keeps. */
final class Residue {
    private static final double SPREAD = 0.5;
    /** Each further cleaning takes away about four fifths. */
    private static final double FURTHER_CLEANING = 0.7;
    /** A taken-apart machine is clean: after this many rounds the line is dismantled. */
    private static final int ROUNDS = 4;

    private static final Load DISMANTLED = new Load(-2.6);
    /** Product carries off a small part of what the points hold. */
    private static final double FIRST_OFF = -2.3;
    /** What stands in the line before cleaning. */
    private static final double SOILED = 2.9;

    private static final double SOILED_SPREAD = 0.9;
    private static final double RINSED_OFF = -2.2;

    private final Story story;
    private final Chance chance;

    Residue(Story story, Chance chance) {
        this.story = story;
        this.chance = chance;
    }

    /** Draws what {@code round} cleanings leave at a point. */
    Load cleaned(Plant.Point point, Plant.Kit kit, int round, Instant when) {
        double spread = SPREAD * chance.normal();
        if (round > ROUNDS) {
            return new Load(DISMANTLED.tenfolds() + spread);
        }
        double more = story.moreResidue(point, kit, when);
        return new Load(point.residue() + more - FURTHER_CLEANING * (round - 1) + spread);
    }

    /** Draws what stands at a point before cleaning. */
    Load soiled() {
        return new Load(SOILED + SOILED_SPREAD * chance.normal());
    }

    Load firstOff() {
        return new Load(FIRST_OFF + SPREAD * chance.normal());
    }

    /** Draws what is at a point while a product without the allergen runs. */
    Load running(Plant.Point point) {
        return new Load(Math.min(point.residue(), RINSED_OFF) + SPREAD * chance.normal());
    }
}
