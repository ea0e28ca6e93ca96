package wickbench.figures.seeing;

import java.util.Optional;
import wickbench.figures.Inputs;
import wickbench.figures.distribution.Normal;

/**
 * How far apart signal and noise lie for a reader (Macmillan and Creelman, Detection Theory, 2nd ed. 2005), in standard deviations.
 *
 * @param dPrime d′ = z(H) − z(F)
 * @param criterion c = −½(z(H) + z(F)); above 0 the reader is slow to say yes
 * @param beta the likelihood ratio at the criterion, exp((z(F)² − z(H)²)/2)
 * @param area the share that two alternatives would get right without bias, Φ(d′/√2)
 */
public record Sensitivity(double dPrime, double criterion, double beta, double area) {

    /** Returns the plain figures; none where all or no signals, or all or no noise, were called signal, for then d′ has no end. */
    public static Optional<Sensitivity> of(long hits, long signals, long alarms, long noise) {
        check(hits, signals, alarms, noise);
        return hits == 0 || hits == signals || alarms == 0 || alarms == noise
                ? Optional.empty()
                : Optional.of(ofRates((double) hits / signals, (double) alarms / noise));
    }

    /**
     * Returns the figures with the log-linear correction (x + ½)/(n + 1), applied always and not only at 0 and 1 (Hautus, Behav. Res.
     * Methods 27:46, 1995).
     */
    public static Sensitivity corrected(long hits, long signals, long alarms, long noise) {
        check(hits, signals, alarms, noise);
        return of(z(hits, signals), z(alarms, noise));
    }

    /** From the nearer end, so that as many hits as alarms are missing give a criterion of 0. */
    private static double z(long seen, long all) {
        return 2 * seen > all
                ? -Normal.quantile((all - seen + 0.5) / (all + 1d))
                : Normal.quantile((seen + 0.5) / (all + 1d));
    }

    /** Returns the figures of two rates between 0 and 1. */
    public static Sensitivity ofRates(double hitRate, double alarmRate) {
        return of(Normal.quantile(hitRate), Normal.quantile(alarmRate));
    }

    private static Sensitivity of(double h, double f) {
        // written so that equal rates give 0 and not −0
        double criterion = 0 - (h + f) / 2;
        return new Sensitivity(h - f, criterion, Math.exp((f * f - h * h) / 2), Normal.below((h - f) / Math.sqrt(2)));
    }

    /**
     * Returns d′ of a choice between two alternatives, √2·z(Pc).
     *
     * @param correct the share chosen rightly, between 0 and 1
     */
    public static double ofTwoAlternatives(double correct) {
        return Math.sqrt(2) * Normal.quantile(correct);
    }

    private static void check(long hits, long signals, long alarms, long noise) {
        Inputs.size("SIGNALS", signals);
        Inputs.size("NOISE", noise);
        Inputs.part("HITS", hits, "SIGNALS", signals);
        Inputs.part("ALARMS", alarms, "NOISE", noise);
    }
}
