package wickbench.ledger.ui.trend;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.chart.Chart;
import wickbench.figures.sums.Remark;
import wickbench.ledger.trend.TrendSignal;
import wickbench.ledger.trend.TrendSignal.News;
import wickbench.ledger.trend.Trending.Rank;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
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
        ranks("points", trend.points());
        ranks("lines", trend.lines());
        ranks("targets", trend.targets());
        ranks("methods", trend.methods());
        base.into(Fit.wide(context.theme().controls().card(parent, 1)), trend);
    }

    private void signals(Trend trend) {
        trend.lacking()
                .ifPresent(why ->
                        note(Meaning.CAUTION, TrendWords.get(trend.marks().isEmpty() ? "nothing" : "lacking", why)));
        trend.answer().ifPresent(answer -> {
            answer.said(Remark.Kind.RESULT).forEach(text -> note(meaning(trend.signals()), text));
            trend.signals().forEach(signal -> signal(trend, signal));
        });
    }

    /** Rarer events are no alarm, however far from the limits. */
    private static Meaning meaning(List<TrendSignal> signals) {
        if (signals.isEmpty()) {
            return Meaning.CALM;
        }
        return signals.stream().allMatch(signal -> signal.news() == News.FEWER) ? Meaning.NOTICE : Meaning.ALARM;
    }

    private void signal(Trend trend, TrendSignal signal) {
        Composite row = Fit.wide(context.theme().controls().box(parent, 2));
        String name = signal.point()
                .filter(point -> point <= trend.marks().size())
                .map(point ->
                        TrendWords.get("signal.of", trend.marks().get(point - 1).name(), signal.text()))
                .orElse(signal.text());
        String words = TrendWords.get("signal." + signal.news().code(), name);
        Fit.wide(context.theme().controls().text(row, Type.BODY, words.replace("&", "&&")));
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

    /** Which of them find most. */
    private void ranks(String key, List<Rank> ranks) {
        if (ranks.size() < 2) {
            return;
        }
        Composite card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().label(card, Type.STRONG, TrendWords.get("rank." + key));
        new RankBars(context.theme()).into(card, ranks);
    }

    private void note(Meaning meaning, String words) {
        Fit.wide(new Note(parent, context.theme(), meaning, words.replace("&", "&&")));
    }

    private void small(String words) {
        context.theme().controls().text(parent, Type.SMALL, words.replace("&", "&&"));
    }
}
