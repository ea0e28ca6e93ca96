package wickbench.api.chart;

import java.util.Optional;

/**
 * How a chart is to be drawn on screen.
 *
 * @param width of the picture, in its own pixels
 * @param height of the picture, in its own pixels
 * @param zoom how many of them make a design pixel: 1, 1.5, 2; words and lines grow with it
 * @param dark light words on a dark ground
 * @param window what to show; empty shows everything
 */
public record ChartLook(int width, int height, double zoom, boolean dark, Optional<ChartWindow> window) {
    public ChartLook {
        if (width < 1 || height < 1 || !(zoom > 0)) {
            throw new IllegalArgumentException("no picture is " + width + " by " + height + " at " + zoom);
        }
    }
}
