package wickbench.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartHit;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.Series;

/** The pointer over a chart. */
final class ChartPointer {
    private static final double REACH = 24;
    private static final double CLOSER = 1.25;
    /** A frame smaller than this is a click with a trembling hand. */
    private static final int LEAST = 6;

    private final ChartView view;
    private final Theme theme;
    private Optional<Rectangle> from = Optional.empty();

    ChartPointer(ChartView view, Theme theme) {
        this.view = view;
        this.theme = theme;
    }

    void listen() {
        view.addListener(SWT.MouseMove, this::move);
        view.addListener(SWT.MouseDown, this::press);
        view.addListener(SWT.MouseUp, this::release);
        view.addListener(SWT.MouseVerticalWheel, this::wheel);
        view.addListener(SWT.MouseDoubleClick, event -> {
            view.lens().everything();
            view.draw();
        });
    }

    private void move(Event event) {
        if (from.isPresent()) {
            view.frame(Optional.of(frame(event)));
        } else {
            hit(event).ifPresent(near -> view.cursor(Optional.of(near)));
        }
    }

    private Optional<ChartCursor> hit(Event event) {
        Optional<Chart> chart = view.shown();
        Optional<ChartPlot> plot = view.lens().plot().filter(field -> field.holds(x(event), y(event)));
        return chart.flatMap(what ->
                        plot.flatMap(field -> ChartHit.nearest(what, field, x(event), y(event), reach(what, field))))
                .map(hit -> new ChartCursor(hit.series(), hit.point()));
    }

    /** Bars may stand far apart; whatever the pointer is over, the nearest is meant. */
    private double reach(Chart chart, ChartPlot plot) {
        boolean bars = chart.series().stream().anyMatch(series -> series.mark() == Series.Mark.BARS);
        return bars ? plot.width() : theme.px(REACH) * view.density();
    }

    private void press(Event event) {
        view.setFocus();
        if (event.button == 1
                && view.lens()
                        .plot()
                        .filter(plot -> plot.holds(x(event), y(event)))
                        .isPresent()) {
            from = Optional.of(new Rectangle(event.x, event.y, 0, 0));
        }
    }

    private void release(Event event) {
        Optional<Rectangle> drawn = from.map(start -> frame(event));
        from = Optional.empty();
        view.frame(Optional.empty());
        if (drawn.filter(frame -> frame.width < LEAST && frame.height < LEAST).isPresent()) {
            hit(event).ifPresent(near -> {
                view.cursor(Optional.of(near));
                view.choose();
            });
        }
        drawn.filter(frame -> frame.width >= LEAST && frame.height >= LEAST).ifPresent(frame -> {
            double density = view.density();
            view.lens()
                    .frame(
                            frame.x * density,
                            frame.y * density,
                            (frame.x + frame.width) * density,
                            (frame.y + frame.height) * density);
            view.draw();
        });
    }

    private Rectangle frame(Event event) {
        Rectangle start = from.orElseThrow();
        int left = Math.min(start.x, event.x);
        int top = Math.min(start.y, event.y);
        return new Rectangle(left, top, Math.abs(event.x - start.x), Math.abs(event.y - start.y));
    }

    private void wheel(Event event) {
        if (view.lens().plot().filter(plot -> plot.holds(x(event), y(event))).isPresent()) {
            view.lens().zoom(x(event), event.count > 0 ? CLOSER : 1 / CLOSER);
            view.draw();
            // the page around does not scroll away meanwhile
            event.doit = false;
        }
    }

    private double x(Event event) {
        return event.x * view.density();
    }

    private double y(Event event) {
        return event.y * view.density();
    }
}
