package wickbench.figures.agreement;

import wickbench.figures.NoAnswer;

/** How much two unlike answers still agree: 1 on the diagonal, less beside it. */
public final class Weights {
    private final double[][] agreement;

    private Weights(double[][] agreement) {
        this.agreement = agreement;
    }

    /** Only like answers agree. */
    public static Weights none(int categories) {
        return of(categories, apart -> apart == 0 ? 1 : 0);
    }

    /** 1 − |i−j|/(k−1), for ordered categories (Cicchetti and Allison, 1971). */
    public static Weights linear(int categories) {
        return of(categories, apart -> 1 - (double) apart / (categories - 1));
    }

    /** 1 − (i−j)²/(k−1)² (Fleiss and Cohen, Educ. Psychol. Meas. 33:613, 1973). */
    public static Weights quadratic(int categories) {
        return of(categories, apart -> 1 - (double) apart * apart / ((categories - 1d) * (categories - 1d)));
    }

    /**
     * Takes weights as they are published: of agreement where the diagonal holds 1, of disagreement (Cohen, Psychol. Bull. 70:213,
     * 1968) where it holds 0.
     */
    public static Weights of(double[][] published) {
        double largest = 0;
        for (double[] row : published) {
            for (double weight : row) {
                largest = Math.max(largest, weight);
            }
        }
        double diagonal = published[0][0];
        double[][] agreement = new double[published.length][published.length];
        for (int i = 0; i < published.length; i++) {
            check(published, i, diagonal, largest);
            for (int j = 0; j < published.length; j++) {
                agreement[i][j] = diagonal == 1 ? published[i][j] : 1 - published[i][j] / largest;
            }
        }
        return new Weights(agreement);
    }

    private static void check(double[][] published, int row, double diagonal, double largest) {
        boolean square = published[row].length == published.length;
        boolean known = diagonal == 1 && largest == 1 || diagonal == 0 && largest > 0;
        if (!square || !known || published[row][row] != diagonal) {
            throw NoAnswer.of("weights", "agreement.weights").inRow(row);
        }
        for (double weight : published[row]) {
            if (!(weight >= 0)) {
                throw NoAnswer.of("weights", "not-negative.expected", weight).inRow(row);
            }
        }
    }

    private static Weights of(int categories, Apart weight) {
        double[][] agreement = new double[categories][categories];
        for (int i = 0; i < categories; i++) {
            for (int j = 0; j < categories; j++) {
                agreement[i][j] = weight.of(Math.abs(i - j));
            }
        }
        return new Weights(agreement);
    }

    int categories() {
        return agreement.length;
    }

    double at(int i, int j) {
        return agreement[i][j];
    }

    private interface Apart {
        double of(int apart);
    }
}
