package wickbench.reading.plan;

import java.time.Duration;

/**
 * Why a plan cannot be done.
 *
 * @param kind what is wrong
 * @param strip the strip's number; empty when the plan as a whole is meant
 * @param by how much, where that can be said
 */
public record PlanFault(Kind kind, String strip, Duration by) {

    /** What may be wrong. */
    public enum Kind {
        /** A strip of the request is neither planned nor named as lost, or one is planned twice. */
        NOT_ONCE,
        /** A strip that could still be started is named as lost. */
        WRONGLY_LOST,
        /** A running strip has another start than it had. */
        START_MOVED,
        /** Work begins before the operator is free. */
        TOO_SOON,
        /** Two blocks of work lie over each other. */
        OVERLAP,
        /** Hands-on work does not end when the strip starts. */
        HANDS_OFF,
        /** The look begins before the strip has developed. */
        EARLY,
        /** The look is not in time. */
        LATE,
        /** A sum of the plan is not what its strips say. */
        SUM
    }
}
