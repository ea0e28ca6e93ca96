package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wickbench.figures.detection.Detection;
import wickbench.figures.detection.Dose;
import wickbench.figures.detection.Levels;
import wickbench.figures.detection.Link;

/** Curves fitted to eight levels (Bliss's beetles, 1935), with coefficients, standard errors and deviance; ours with limits too. */
final class DetectionFits implements Contest {
    private static final int FITS = 200;
    private static final int OURS = 20_000;
    private static final double GOAL = 20;

    private final Link link;

    DetectionFits(Link link) {
        this.link = link;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "detection fits, %s, 8 levels", link.code());
    }

    @Override
    public Unit unit() {
        return Unit.PER_SECOND;
    }

    @Override
    public int rounds() {
        return 7;
    }

    @Override
    public int warmUps() {
        return 5;
    }

    @Override
    public Field field(Path folder) throws Exception {
        Contestant r = Statistics.run(
                folder,
                "d <- c(1.6907,1.7242,1.7552,1.7842,1.8113,1.8369,1.8610,1.8839);"
                        + " n <- c(59,60,62,56,63,59,62,60); x <- c(6,13,18,28,52,53,61,60)",
                "for (i in 1:" + FITS + ") f <- glm(cbind(x, n - x) ~ d, binomial(" + link.code() + "))",
                FITS);
        return new Field(new Ours(), List.of(new Baseline(r, GOAL)));
    }

    private final class Ours implements Contestant {
        private final Levels study = new Levels(
                new double[] {1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839},
                new long[] {59, 60, 62, 56, 63, 59, 62, 60},
                new long[] {6, 13, 18, 28, 52, 53, 61, 60});

        private double kept;

        @Override
        public String name() {
            return "ours";
        }

        @Override
        public double lap() throws Exception {
            return Timed.perSecond(OURS, () -> {
                for (int i = 0; i < OURS; i++) {
                    kept += Detection.fit(study, link, Dose.LINEAR, 0.95)
                            .lod95()
                            .upper();
                }
            });
        }

        @Override
        public void close() {
            // what was reckoned must be looked at, or the compiler leaves it out
            if (!Double.isFinite(kept)) {
                throw new IllegalStateException("a limit is no number");
            }
        }
    }
}
