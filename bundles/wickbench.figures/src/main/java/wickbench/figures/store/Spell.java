package wickbench.figures.store;

import wickbench.figures.Inputs;

/**
 * A time at one temperature.
 *
 * @param hours above 0
 * @param celsius from −100 to 150 °C, which a temperature in kelvin never is
 */
public record Spell(double hours, double celsius) {
    private static final double COLDEST = -100;
    private static final double HOTTEST = 150;

    public Spell {
        Inputs.positive("hours", hours);
        Inputs.within("celsius", celsius, COLDEST, HOTTEST);
    }
}
