package wickbench.ledger.services;

import java.util.List;
import java.util.stream.Stream;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.words.Decimals;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.Remark;
import wickbench.ledger.papers.FilterText;
import wickbench.ledger.trend.TrendSignal;
import wickbench.ledger.trend.Trending.Cell;
import wickbench.ledger.trend.Trending.Mark;
import wickbench.ledger.trend.Trending.Rank;
import wickbench.ledger.trend.Trending.Trend;

/** Prints a trend: signals in words first, then the weeks, then where. */
record TrendPrint(Terminal terminal) {
    void print(Trend trend) {
        if (terminal.json()) {
            terminal.json(json(trend));
            return;
        }
        terminal.line(LedgerWords.get(
                "trend.head." + trend.asked().events().code(),
                FilterText.of(trend.asked().filter())));
        trend.base()
                .ifPresentOrElse(
                        base -> terminal.line(LedgerWords.get("trend.frozen", base.from(), base.to(), base.reason())),
                        () -> terminal.line(LedgerWords.get("trend.not-frozen")));
        trend.lacking().ifPresent(why -> terminal.line(LedgerWords.get("trend.lacking", why)));
        trend.answer().ifPresent(answer -> answer(answer, trend.signals()));
        terminal.line("");
        terminal.table(
                words("point", "strips", "events"),
                trend.marks().stream().map(TrendPrint::row).toList());
        terminal.table(
                words("where", "strips", "events", "share"),
                trend.points().stream().map(TrendPrint::row).toList());
        terminal.table(
                words("line", "strips", "events", "share"),
                trend.lines().stream().map(TrendPrint::row).toList());
        terminal.table(
                words("target", "strips", "events", "share"),
                trend.targets().stream().map(TrendPrint::row).toList());
        terminal.line(LedgerWords.get("trend.population"));
        terminal.line(LedgerWords.get("caution"));
    }

    private void answer(Answer answer, List<TrendSignal> signals) {
        answer.said(Remark.Kind.RESULT).forEach(terminal::line);
        signals.forEach(signal -> terminal.line(
                "  " + LedgerWords.get("trend.news." + signal.news().code(), signal.text())));
        answer.said(Remark.Kind.FORMULA).forEach(terminal::line);
        answer.said(Remark.Kind.CAUTION).forEach(terminal::line);
    }

    private static List<String> words(String... columns) {
        return Stream.of(columns)
                .map(column -> LedgerWords.get("trend.column." + column))
                .toList();
    }

    private static List<String> row(Mark mark) {
        return List.of(mark.name(), String.valueOf(mark.strips()), String.valueOf(mark.events()));
    }

    private static List<String> row(Rank rank) {
        return List.of(
                rank.name(),
                String.valueOf(rank.strips()),
                String.valueOf(rank.events()),
                Decimals.of(100 * rank.share(), 1) + " %");
    }

    private static Json json(Trend trend) {
        return Json.object()
                .with("events", trend.asked().events().code())
                .with("chart", trend.asked().kind().code())
                .withOptional("base", trend.base().map(base -> base.body()))
                .withOptional("figures", trend.answer().map(Answer::figures))
                .withText("lacking", trend.lacking())
                .with(
                        "news",
                        Json.array(trend.signals().stream()
                                .map(signal -> new Json.Text(signal.news().code()))
                                .toList()))
                .with(
                        "marks",
                        Json.array(trend.marks().stream().map(TrendPrint::json).toList()))
                .with(
                        "points",
                        Json.array(trend.points().stream().map(TrendPrint::json).toList()))
                .with(
                        "lines",
                        Json.array(trend.lines().stream().map(TrendPrint::json).toList()))
                .with(
                        "methods",
                        Json.array(
                                trend.methods().stream().map(TrendPrint::json).toList()))
                .with(
                        "targets",
                        Json.array(
                                trend.targets().stream().map(TrendPrint::json).toList()))
                .with(
                        "cells",
                        Json.array(trend.cells().stream().map(TrendPrint::json).toList()));
    }

    private static Json json(Mark mark) {
        return Json.object()
                .with("name", mark.name())
                .with("strips", mark.strips())
                .with("events", mark.events())
                .withText("result", mark.result().map(Object::toString));
    }

    private static Json json(Rank rank) {
        return Json.object()
                .with("name", rank.name())
                .with("strips", rank.strips())
                .with("events", rank.events());
    }

    private static Json json(Cell cell) {
        return Json.object()
                .with("place", cell.place())
                .with("line", cell.line())
                .with("week", cell.monday().toString())
                .with("strips", cell.strips())
                .with("events", cell.events());
    }
}
