package wickbench.ledger.ui.trend;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.chart.Chart;
import wickbench.figures.sums.Remark;
import wickbench.ledger.trend.Trending.Rank;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.ledger.ui.trend.Signals.Signal;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** A trend: what it signals, in words; its chart; where and when, as a map; by line. */
record TrendView(Composite parent, PageContext context, TrendDoors doors, Consumer<Choice> choose) {

    /** What a person wants to see the strips behind of; a point of the chart, or a place in a week. */
    record Choice(Optional<Integer> mark, Optional<String> place, Optional<java.time.LocalDate> monday) {}

    void fill(Trend trend, Optional<Chart> plot, BaseCard base) {
        signals(trend);
        plot.ifPresent(chart -> {
            ChartView view = Fit.wide(new ChartView(parent, context, doors.painter()));
            view.chart(chart);
            view.onChoose(this::mark);
        });
        trend.answer().ifPresent(answer -> {
            answer.said(Remark.Kind.FORMULA).forEach(this::small);
            answer.said(Remark.Kind.CAUTION).forEach(this::small);
        });
        small(TrendWords.get("population"));
        map(trend);
        lines(trend.lines());
        base.into(Fit.wide(context.theme().controls().card(parent, 1)), trend);
    }

    private void signals(Trend trend) {
        trend.lacking()
                .ifPresent(why ->
                        note(Meaning.CAUTION, TrendWords.get(trend.marks().isEmpty() ? "nothing" : "lacking", why)));
        trend.answer().ifPresent(answer -> {
            List<Signal> signals = Signals.of(answer);
            answer.said(Remark.Kind.RESULT)
                    .forEach(text -> note(signals.isEmpty() ? Meaning.CALM : Meaning.ALARM, text));
            signals.forEach(signal -> signal(trend, signal));
        });
    }

    private void signal(Trend trend, Signal signal) {
        Composite row = Fit.wide(context.theme().controls().box(parent, 2));
        String name = signal.point()
                .filter(point -> point <= trend.marks().size())
                .map(point ->
                        TrendWords.get("signal.of", trend.marks().get(point - 1).name(), signal.text()))
                .orElse(signal.text());
        Fit.wide(context.theme().controls().text(row, Type.BODY, name.replace("&", "&&")));
        signal.point()
                .ifPresent(point ->
                        context.theme().controls().button(row, TrendWords.get("signal.strips"), () -> mark(point - 1)));
    }

    private void mark(int point) {
        choose.accept(new Choice(Optional.of(point), Optional.empty(), Optional.empty()));
    }

    private void map(Trend trend) {
        HeatGrid grid = HeatGrid.of(trend.cells(), trend.points());
        if (grid.empty()) {
            return;
        }
        Composite card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().label(card, Type.STRONG, TrendWords.get("heat.title"));
        context.theme().controls().text(card, Type.SMALL, TrendWords.get("heat.line"));
        Fit.wide(new HeatMap(
                card,
                context.theme(),
                grid,
                (place, monday) ->
                        choose.accept(new Choice(Optional.empty(), Optional.of(place), Optional.of(monday)))));
    }

    private void lines(List<Rank> lines) {
        if (lines.isEmpty()) {
            return;
        }
        Composite card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().label(card, Type.STRONG, TrendWords.get("lines.title"));
        Facts facts = new Facts(card, context.theme());
        lines.forEach(rank -> facts.add(
                rank.name(),
                TrendWords.get("lines.share", rank.events(), rank.strips(), Math.round(1000 * rank.share()) / 10.0)));
    }

    private void note(Meaning meaning, String words) {
        Fit.wide(new Note(parent, context.theme(), meaning, words.replace("&", "&&")));
    }

    private void small(String words) {
        context.theme().controls().text(parent, Type.SMALL, words.replace("&", "&&"));
    }
}
