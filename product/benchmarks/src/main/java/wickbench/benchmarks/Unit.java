package wickbench.benchmarks;

import java.util.Locale;

/** What a lap measures. */
enum Unit {
    PER_SECOND("/s", true),
    MILLIS(" ms", false),
    SECONDS(" s", false),
    COUNT("", false),
    MEGABYTES(" MB", false),
    SHARE(" of all", true);

    private final String sign;
    private final boolean moreIsBetter;

    Unit(String sign, boolean moreIsBetter) {
        this.sign = sign;
        this.moreIsBetter = moreIsBetter;
    }

    boolean moreIsBetter() {
        return moreIsBetter;
    }

    String text(double value) {
        if (this == SECONDS || this == COUNT) {
            return String.format(Locale.ROOT, "%,.0f", value) + sign;
        }
        String form = value >= 100 ? "%,.0f" : value >= 10 ? "%.1f" : "%.3f";
        return String.format(Locale.ROOT, form, value) + sign;
    }
}
