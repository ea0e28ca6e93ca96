package wickbench.figures.trend;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/** Gauss–Legendre nodes on an interval, on which integral equations of the second kind become linear ones. */
record Nodes(double[] points, double[] weights) {
    private static final int COUNT = 80;

    static Nodes between(double from, double to) {
        GaussIntegrator rule = new GaussIntegratorFactory(COUNT).legendre(COUNT, from, to);
        double[] points = new double[COUNT];
        double[] weights = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            points[i] = rule.getPoint(i);
            weights[i] = rule.getWeight(i);
        }
        return new Nodes(points, weights);
    }

    /** Solves f(z) = 1 + atom(z)·f(from) + ∫ f(x)·kernel(z, x) dx and returns f(from). */
    double solve(double from, DoubleUnaryOperator atom, DoubleBinaryOperator kernel) {
        int n = COUNT;
        double[][] system = new double[n + 1][n + 1];
        double[] ones = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            double z = i == n ? from : points[i];
            for (int j = 0; j < n; j++) {
                system[i][j] = -weights[j] * kernel.applyAsDouble(z, points[j]);
            }
            system[i][n] = -atom.applyAsDouble(z);
            system[i][i] += 1;
            ones[i] = 1;
        }
        return new LUDecomposition(new Array2DRowRealMatrix(system, false), Double.MIN_NORMAL)
                .getSolver()
                .solve(new ArrayRealVector(ones, false))
                .getEntry(n);
    }
}
