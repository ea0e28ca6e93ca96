package wickbench.figures.detection;

import wickbench.figures.distribution.Normal;

/** The form of a detection curve: how the linear predictor η becomes a probability P. */
public enum Link {
    /** P = 1 − exp(−a·d): one particle is enough, η = ln a + ln d. The slope is 1, not fitted. */
    ONE_HIT("one-hit") {
        @Override
        Chance at(double eta) {
            return CLOGLOG.at(eta);
        }

        @Override
        double eta(double p) {
            return CLOGLOG.eta(p);
        }
    },
    /** P = 1 − exp(−exp(η)); on ln dose P = 1 − exp(−a·d^b). */
    CLOGLOG("cloglog") {
        @Override
        Chance at(double eta) {
            double hits = Math.exp(eta);
            double p = -Math.expm1(-hits);
            return new Chance(p, Math.exp(-hits), Math.log(p), -hits, hits / p);
        }

        @Override
        double eta(double p) {
            return Math.log(-Math.log1p(-p));
        }
    },
    /** P = Φ(η). */
    PROBIT("probit") {
        @Override
        Chance at(double eta) {
            double p = Normal.below(eta);
            double q = Normal.above(eta);
            return new Chance(p, q, Normal.logAbove(-eta), Normal.logAbove(eta), Normal.density(eta) / p / q);
        }

        @Override
        double eta(double p) {
            return Normal.quantile(p);
        }
    },
    /** P = 1/(1 + exp(−η)). */
    LOGIT("logit") {
        @Override
        Chance at(double eta) {
            double p = 1 / (1 + Math.exp(-eta));
            double q = 1 / (1 + Math.exp(eta));
            return new Chance(p, q, -Math.log1p(Math.exp(-eta)), -Math.log1p(Math.exp(eta)), 1);
        }

        @Override
        double eta(double p) {
            return Math.log(p) - Math.log1p(-p);
        }
    };

    private final String code;

    Link(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    /** Returns the scale on which this form is usually fitted: ln for hits, log10 for probit and logit. */
    public Dose usualDose() {
        return this == PROBIT || this == LOGIT ? Dose.LOG10 : Dose.LN;
    }

    /**
     * A probability with all that a fit needs of it.
     *
     * @param p the probability
     * @param q 1 − p
     * @param logP ln p
     * @param logQ ln q
     * @param score dp/dη divided by p·q
     */
    record Chance(double p, double q, double logP, double logQ, double score) {}

    abstract Chance at(double eta);

    abstract double eta(double p);
}
