package wickbench.widgets;

import java.util.Optional;
import wickbench.api.chart.ChartPicture;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.ChartWindow;
import wickbench.api.chart.Span;

/** What of a chart a person looks at: the whole at first, then what zooming and moving made of it. */
final class ChartLens {
    private Optional<ChartWindow> window = Optional.empty();
    private Optional<ChartPlot> plot = Optional.empty();
    private Optional<ChartWindow> whole = Optional.empty();

    /** Returns what to draw; empty for everything. */
    Optional<ChartWindow> window() {
        return window;
    }

    /** Forgets what was seen of another chart. */
    void reset() {
        window = Optional.empty();
        plot = Optional.empty();
        whole = Optional.empty();
    }

    /** Learns where the values lie in a picture that was drawn. */
    void take(ChartPicture picture, boolean everything) {
        plot = Optional.of(picture.plot());
        if (everything) {
            whole = Optional.of(picture.plot().window());
        }
    }

    /** Returns where values lie in the picture that was drawn last. */
    Optional<ChartPlot> plot() {
        return plot;
    }

    /** Comes closer along x about a pixel; a factor below 1 goes away. */
    void zoom(double pixelX, double factor) {
        aim().ifPresent(aim -> look(
                new ChartWindow(aim.zoomed(pixelX, 0, factor).x(), aim.window().y())));
    }

    /** Moves what is seen by parts of the field. */
    void move(double right, double up) {
        aim().ifPresent(aim -> look(aim.moved(-right * aim.width(), up * aim.height())));
    }

    /** Shows what lies between two corners. */
    void frame(double x1, double y1, double x2, double y2) {
        aim().ifPresent(aim -> look(aim.between(x1, y1, x2, y2)));
    }

    void everything() {
        window = Optional.empty();
    }

    /** Moves along x until a value is seen; tells whether it had to. */
    boolean reveal(double x) {
        Optional<ChartWindow> seen = aim().map(ChartPlot::window);
        if (seen.isEmpty() || seen.get().x().holds(x)) {
            return false;
        }
        double half = seen.get().x().length() / 2;
        window = Optional.of(
                new ChartWindow(new Span(x - half, x + half), seen.get().y()));
        return true;
    }

    /** The field with the window that is wanted in it, be it drawn yet or not. */
    private Optional<ChartPlot> aim() {
        return plot.map(drawn -> window.or(() -> whole).map(drawn::with).orElse(drawn));
    }

    private void look(ChartWindow wanted) {
        boolean all = whole.isPresent()
                && holds(wanted.x(), whole.get().x())
                && holds(wanted.y(), whole.get().y());
        window = Optional.of(wanted).filter(here -> !all);
    }

    private static boolean holds(Span outer, Span inner) {
        return outer.low() <= inner.low() && outer.high() >= inner.high();
    }
}
