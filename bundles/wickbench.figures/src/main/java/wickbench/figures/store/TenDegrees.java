package wickbench.figures.store;

import wickbench.figures.Inputs;

/**
 * The rule of ten degrees: ageing goes {@code q10} times faster for each 10 °C. Source: ASTM F1980.
 *
 * @param q10 1 to 10; 2 is usual where nothing is known
 */
public record TenDegrees(double q10) {
    public TenDegrees {
        Inputs.within("q10", q10, 1, 10);
    }

    /** Returns Q10^((t − t₀)/10): how much faster ageing is at {@code celsius} than at {@code reference}. */
    public double factor(double reference, double celsius) {
        return Math.pow(q10, (new Spell(1, celsius).celsius() - new Spell(1, reference).celsius()) / 10);
    }

    /** Returns how long to hold at {@code celsius} to age as much as {@code time} at {@code reference}; in the unit of the time. */
    public double accelerated(double time, double reference, double celsius) {
        return Inputs.notNegative("time", time) / factor(reference, celsius);
    }

    /** Returns the hours at {@code reference} that age as much as the spell does. */
    public double shelfLifeUsed(Spell spell, double reference) {
        return spell.hours() * factor(reference, spell.celsius());
    }
}
