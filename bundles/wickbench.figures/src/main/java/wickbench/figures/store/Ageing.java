package wickbench.figures.store;

import wickbench.figures.Inputs;

/**
 * How the speed of ageing depends on temperature (Arrhenius): proportional to e^(−ΔH/RT).
 *
 * <p>R = 0.0083144 kJ/mol/K and 0 °C = 273.15 K, so that the usual 83.144 kJ/mol makes ΔH/R exactly 10000 K (USP &lt;1079.2&gt;;
 * Haynes, J. Pharm. Sci. 60:927, 1971).
 *
 * @param heat ΔH, 10 to 1000 kJ/mol
 */
public record Ageing(double heat) {
    private static final double GAS = 0.0083144;
    private static final double KELVIN = 273.15;
    private static final double USUAL = 83.144;
    private static final double TEN = 10;

    public Ageing {
        Inputs.within("heat", heat, 10, 1000);
    }

    /** Returns the law with 83.144 kJ/mol, used where no product value is known. */
    public static Ageing usual() {
        return new Ageing(USUAL);
    }

    /** Returns e^(ΔH/R·(1/T₁ − 1/T₂)): how much faster ageing is at {@code celsius} than at {@code reference}. */
    public double factor(double reference, double celsius) {
        return Math.exp(ratio() * (1 / kelvin(reference) - 1 / kelvin(celsius)));
    }

    /** Returns Q10, the factor from {@code celsius} to 10 °C above. */
    public double q10(double celsius) {
        return factor(celsius, celsius + TEN);
    }

    /** Returns the hours at {@code reference} that age as much as the spell does. */
    public double shelfLifeUsed(Spell spell, double reference) {
        return spell.hours() * factor(reference, spell.celsius());
    }

    double ratio() {
        return heat / GAS;
    }

    static double kelvin(double celsius) {
        return new Spell(1, celsius).celsius() + KELVIN;
    }

    static double celsius(double kelvin) {
        return kelvin - KELVIN;
    }
}
