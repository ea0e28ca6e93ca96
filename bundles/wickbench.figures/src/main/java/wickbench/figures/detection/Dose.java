package wickbench.figures.detection;

/** The scale on which the level enters a curve. */
public enum Dose {
    /** As it is, for levels that are logarithms already, and for curves that are linear in the level. */
    LINEAR("linear") {
        @Override
        double of(double level) {
            return level;
        }

        @Override
        double back(double x) {
            return x;
        }
    },
    /** Logarithm to base 10. */
    LOG10("log10") {
        @Override
        double of(double level) {
            return Math.log10(level);
        }

        @Override
        double back(double x) {
            return Math.pow(10, x);
        }
    },
    /** Natural logarithm, on which the slope of the complementary log-log curve is the exponent b of 1 − exp(−a·d^b). */
    LN("ln") {
        @Override
        double of(double level) {
            return Math.log(level);
        }

        @Override
        double back(double x) {
            return Math.exp(x);
        }
    };

    private final String code;

    Dose(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    boolean isLogarithm() {
        return this != LINEAR;
    }

    abstract double of(double level);

    abstract double back(double x);
}
