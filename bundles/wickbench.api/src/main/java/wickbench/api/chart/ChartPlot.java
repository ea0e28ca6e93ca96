package wickbench.api.chart;

/**
 * Where the values of a drawn chart lie; in pixels of its picture, y downwards.
 *
 * @param left left edge of the field in which values are drawn
 * @param top its upper edge
 * @param window what of the chart the field shows
 */
public record ChartPlot(
        double left, double top, double width, double height, ChartWindow window, Axis.Scale x, Axis.Scale y) {

    public double pixelX(double value) {
        return left + part(x, window.x(), value) * width;
    }

    public double pixelY(double value) {
        return top + (1 - part(y, window.y(), value)) * height;
    }

    public double xAt(double pixel) {
        return value(x, window.x(), (pixel - left) / width);
    }

    public double yAt(double pixel) {
        return value(y, window.y(), 1 - (pixel - top) / height);
    }

    /** Tells whether a pixel lies in the field of values. */
    public boolean holds(double pixelX, double pixelY) {
        return pixelX >= left && pixelX <= left + width && pixelY >= top && pixelY <= top + height;
    }

    /** Returns the same field with another window in it. */
    public ChartPlot with(ChartWindow other) {
        return new ChartPlot(left, top, width, height, other, x, y);
    }

    /** Returns the window that would show exactly what lies between two corners. */
    public ChartWindow between(double x1, double y1, double x2, double y2) {
        return new ChartWindow(span(xAt(x1), xAt(x2), window.x()), span(yAt(y1), yAt(y2), window.y()));
    }

    /**
     * Returns the window after zooming about a pixel, whose values stay where they are.
     *
     * @param factor above 1 to come closer
     */
    public ChartWindow zoomed(double pixelX, double pixelY, double factor) {
        double right = left + width;
        double bottom = top + height;
        return between(
                pixelX + (left - pixelX) / factor,
                pixelY + (top - pixelY) / factor,
                pixelX + (right - pixelX) / factor,
                pixelY + (bottom - pixelY) / factor);
    }

    /** Returns the window after the picture was dragged by so many pixels. */
    public ChartWindow moved(double right, double down) {
        return between(left - right, top - down, left + width - right, top + height - down);
    }

    private static Span span(double one, double other, Span otherwise) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        // beyond the precision of numbers there is nothing to see
        boolean fit = Double.isFinite(low) && Double.isFinite(high) && high - low > Math.ulp(high) * 8;
        return fit ? new Span(low, high) : otherwise;
    }

    private static double part(Axis.Scale scale, Span span, double value) {
        return scale instanceof Axis.Logarithmic
                ? (Math.log(value) - Math.log(span.low())) / (Math.log(span.high()) - Math.log(span.low()))
                : (value - span.low()) / span.length();
    }

    private static double value(Axis.Scale scale, Span span, double part) {
        return scale instanceof Axis.Logarithmic
                ? span.low() * Math.pow(span.high() / span.low(), part)
                : span.low() + part * span.length();
    }
}
