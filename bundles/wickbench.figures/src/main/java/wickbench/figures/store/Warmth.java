package wickbench.figures.store;

import java.util.List;
import wickbench.figures.NoAnswer;

/**
 * How warm a store was, told in one temperature: the constant one that ages its contents as much.
 *
 * <p>T = (ΔH/R) ÷ −ln(Σ tᵢ·e^(−ΔH/RTᵢ) ÷ Σ tᵢ). Source: USP &lt;1079.2&gt;; ICH Q1A(R2), glossary; Haynes, J. Pharm. Sci. 60:927
 * (1971); unequal intervals: Tong &amp; Lock, JSM Proceedings 2015:2065. It is a screening number: it excuses neither freezing nor an
 * excursion that the label forbids.
 *
 * @param kinetic the mean kinetic temperature, °C
 * @param mean the arithmetic mean weighted by time, °C; never above the kinetic one
 * @param lowest °C
 * @param highest °C
 * @param hours the time that the temperatures cover
 */
public record Warmth(double kinetic, double mean, double lowest, double highest, double hours) {

    /** Weighs each spell with its length. */
    public static Warmth of(List<Spell> spells, Ageing ageing) {
        if (spells.isEmpty()) {
            throw NoAnswer.of("", "warmth.nothing");
        }
        double hours = spells.stream().mapToDouble(Spell::hours).sum();
        double mean = spells.stream()
                        .mapToDouble(spell -> spell.hours() * spell.celsius())
                        .sum()
                / hours;
        double lowest = spells.stream().mapToDouble(Spell::celsius).min().orElseThrow();
        double highest = spells.stream().mapToDouble(Spell::celsius).max().orElseThrow();
        double kinetic = lowest == highest ? highest : kinetic(spells, ageing, highest, hours);
        return new Warmth(kinetic, mean, lowest, highest, hours);
    }

    /** Returns for how many hours of {@code spells} it was warmer than a limit. */
    public static double hoursAbove(List<Spell> spells, double limit) {
        return spells.stream()
                .filter(spell -> spell.celsius() > limit)
                .mapToDouble(Spell::hours)
                .sum();
    }

    /** Returns for how many hours of {@code spells} it was colder than a limit. */
    public static double hoursBelow(List<Spell> spells, double limit) {
        return spells.stream()
                .filter(spell -> spell.celsius() < limit)
                .mapToDouble(Spell::hours)
                .sum();
    }

    /** Measured from the highest temperature, so that no term is too small to be kept. */
    private static double kinetic(List<Spell> spells, Ageing ageing, double highest, double hours) {
        double speed = spells.stream()
                        .mapToDouble(spell -> spell.hours() * ageing.factor(highest, spell.celsius()))
                        .sum()
                / hours;
        double ratio = ageing.ratio();
        return Ageing.celsius(ratio / (ratio / Ageing.kelvin(highest) - Math.log(speed)));
    }
}
