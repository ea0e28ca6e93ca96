package wickbench.benchmarks;

import java.util.Locale;

/** One line of the table: a figure against one baseline. */
record Line(String figure, Unit unit, double ours, String baseline, double theirs, double goal) {

    double ratio() {
        return ours / theirs;
    }

    /** Never where nothing was measured. */
    boolean met() {
        return unit.moreIsBetter() ? ratio() >= goal : ratio() <= goal;
    }

    String markdown() {
        return Double.isNaN(theirs) ? unmeasured() : measured();
    }

    private String unmeasured() {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | – | %s %.2f × | **not measured** |",
                figure,
                unit.text(ours),
                baseline,
                unit.moreIsBetter() ? "≥" : "≤",
                goal);
    }

    private String measured() {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s: %s | %.2f × | %s %.2f × | %s |",
                figure,
                unit.text(ours),
                baseline,
                unit.text(theirs),
                ratio(),
                unit.moreIsBetter() ? "≥" : "≤",
                goal,
                met() ? "met" : "**not met**");
    }
}
