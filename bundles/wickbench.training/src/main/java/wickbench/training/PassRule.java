package wickbench.training;

/**
 * At most so many of each mistake pass.
 *
 * @param nearMissed near-limit strips with a line, called without
 * @param clearMissed clear positives and hook strips, not called positive; a hook strip also when its lost hook line was not called
 * @param falseAlarms blanks, and near-limit strips without a line, called positive
 * @param invalidMissed invalid strips called anything else
 * @param outsideWindow strips read before or after the method's window
 */
public record PassRule(int nearMissed, int clearMissed, int falseAlarms, int invalidMissed, int outsideWindow) {
    public PassRule {
        if (nearMissed < 0 || clearMissed < 0 || falseAlarms < 0 || invalidMissed < 0 || outsideWindow < 0) {
            throw new IllegalArgumentException("expected at least 0 mistakes of each kind");
        }
    }
}
