package wickbench.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.ChartWindow;
import wickbench.api.chart.Series;

/** The keys of a chart. */
record ChartKeys(ChartView view) {
    private static final double CLOSER = 1.5;
    private static final double STEP = 0.2;
    /** How many steps with Ctrl go across what is seen. */
    private static final int LONG_STEPS = 20;

    void listen() {
        view.addListener(SWT.KeyDown, this::key);
        view.addListener(SWT.Traverse, event -> {
            // arrows stay here; Tab, Enter and Escape go where they always go
            boolean arrow = event.detail == SWT.TRAVERSE_ARROW_NEXT || event.detail == SWT.TRAVERSE_ARROW_PREVIOUS;
            event.doit = !arrow;
        });
    }

    private void key(Event event) {
        switch (event.character) {
            case '+', '=' -> zoom(CLOSER);
            case '-' -> zoom(1 / CLOSER);
            case '0' -> view.lens().everything();
            case SWT.CR -> view.choose();
            default -> arrow(event, (event.stateMask & SWT.SHIFT) != 0);
        }
        view.draw();
    }

    private void arrow(Event event, boolean move) {
        int along = (event.stateMask & SWT.CTRL) != 0 ? far() : 1;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> go(move, -STEP, 0, -along, 0);
            case SWT.ARROW_RIGHT -> go(move, STEP, 0, along, 0);
            case SWT.ARROW_UP -> go(move, 0, STEP, 0, -1);
            case SWT.ARROW_DOWN -> go(move, 0, -STEP, 0, 1);
            case SWT.HOME -> step(-series().size(), 0);
            case SWT.END -> step(series().size(), 0);
            default -> {}
        }
    }

    private void go(boolean move, double right, double up, int along, int across) {
        if (move) {
            view.lens().move(right, up);
        } else {
            step(along, across);
        }
    }

    private void step(int along, int across) {
        Optional<Chart> chart = view.shown().filter(any -> any.series().stream().anyMatch(one -> one.size() > 0));
        chart.ifPresent(what -> {
            ChartCursor next = view.cursor()
                    .map(here -> across == 0 ? here.along(what, along) : here.across(what, across))
                    .orElseGet(() -> first(what));
            view.cursor(Optional.of(next));
            view.lens().reveal(next.x(what));
        });
    }

    /** The first point in sight. */
    private ChartCursor first(Chart chart) {
        int series = 0;
        while (chart.series().get(series).size() == 0) {
            series++;
        }
        Series one = chart.series().get(series);
        int at = view.lens()
                .plot()
                .map(ChartPlot::window)
                .map(ChartWindow::x)
                .map(x -> one.firstFrom(x.low()))
                .orElse(0);
        return new ChartCursor(series, Math.min(at, one.size() - 1)).near(chart);
    }

    private Series series() {
        int place = view.cursor().map(ChartCursor::series).orElse(0);
        return view.shown()
                .filter(chart -> !chart.series().isEmpty())
                .map(chart -> chart.series().get(place))
                .orElseGet(() -> new Series("", Series.Mark.LINE, new double[0], new double[0]));
    }

    private int far() {
        return view.lens()
                .plot()
                .map(plot -> series().firstFrom(plot.window().x().high())
                        - series().firstFrom(plot.window().x().low()))
                .map(seen -> Math.max(1, seen / LONG_STEPS))
                .orElse(1);
    }

    /** Zooms about the point in hand, or about the middle. */
    private void zoom(double factor) {
        view.lens().plot().ifPresent(plot -> {
            double at = view.cursor()
                    .flatMap(here -> view.shown().map(here::x))
                    .map(plot::pixelX)
                    .filter(x -> x >= plot.left() && x <= plot.left() + plot.width())
                    .orElse(plot.left() + plot.width() / 2);
            view.lens().zoom(at, factor);
        });
    }
}
