package wickbench.report.chart;

import java.awt.Color;

/** How well a colour stands out: contrast ratio and relative luminance of WCAG 2.2. */
final class Contrast {
    /** What lines and marks must reach (WCAG 2.2, 1.4.11). */
    static final double OF_MARKS = 3;
    /** What words must reach (WCAG 2.2, 1.4.3). */
    static final double OF_WORDS = 4.5;

    private Contrast() {}

    /** Returns a ratio from 1 (the same) to 21 (black and white). */
    static double ratio(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
