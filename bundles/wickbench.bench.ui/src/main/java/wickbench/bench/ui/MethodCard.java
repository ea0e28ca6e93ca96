package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.words.Decimals;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Badge;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Spans;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A method on one page, as it hangs over the bench. */
record MethodCard(Composite parent, Theme theme, Known known) {
    /** @param acts adds below the head what can be done about the method */
    void fill(IssuedMethod issued, List<IssuedMethod> versions, Consumer<Composite> acts) {
        Method method = issued.method();
        theme.controls().text(parent, Type.HEADING, method.title());
        Composite row = Fit.wide(theme.controls().box(parent, 3));
        new Badge(row, theme, MethodTable.state(issued));
        new Badge(row, theme, MethodTable.signature(issued));
        reference(row, method);
        acts.accept(parent);
        said(method);
        new MethodVersions(card("card.versions"), theme, known).fill(versions);
    }

    /** Shows a method that is not issued. */
    void draft(Method method) {
        theme.controls().text(parent, Type.HEADING, method.title());
        reference(parent, method);
        said(method);
    }

    private void said(Method method) {
        cautionOfFormat(method);
        strip(method);
        says(method);
        work(method);
        new MethodSteps(card("card.steps"), theme).fill(method.steps());
        cautions(method);
    }

    private void reference(Composite row, Method method) {
        theme.controls()
                .text(
                        row,
                        Type.BODY,
                        BenchUiWords.get(
                                "card.ref", method.ref().id(), method.ref().version(), method.kit()));
    }

    private void cautionOfFormat(Method method) {
        if (method.format() == Format.SANDWICH) {
            Fit.wide(new Note(parent, theme, Meaning.CAUTION, BenchUiWords.get("card.two-lines")));
        } else if (method.format() == Format.COMPETITIVE) {
            Fit.wide(new Note(parent, theme, Meaning.NOTICE, BenchUiWords.get("card.competitive")));
        }
    }

    private void strip(Method method) {
        Composite card = card("card.strip");
        theme.controls().text(card, Type.BODY, ReadingWords.text(method.format()));
        new PatternRow(card, theme).fill(method);
        theme.controls().text(card, Type.SMALL, BenchUiWords.get("card.damaged"));
    }

    private void says(Method method) {
        Composite card = card("card.says");
        Facts facts = new Facts(card, theme)
                .add(
                        word("target"),
                        method.target().name() + ", "
                                + ReadingWords.text(method.target().basis()))
                .add(word("limit"), limit(method.limit()));
        method.insertRevision().ifPresent(some -> facts.add(word("insert"), some));
        String unit = " " + method.limit().value().unit().symbol();
        method.positiveFrom().ifPresent(some -> facts.add(word("positive-from"), Decimals.of(some) + unit));
        method.hookOnset().ifPresent(some -> facts.add(word("hook-onset"), Decimals.of(some) + unit));
        method.faintTest().ifPresent(seen -> facts.add(word("faint"), ReadingWords.text(seen)));
        method.target()
                .factors()
                .forEach(factor -> facts.add(
                        ReadingWords.text(factor.to()),
                        BenchUiWords.get("card.factor", Decimals.of(factor.factor()), factor.source())));
        if (!method.target().notSeen().isEmpty()) {
            facts.add(word("not-seen"), String.join("; ", method.target().notSeen()));
        }
    }

    private static String limit(Method.Limit limit) {
        String value = limit.value() + " " + ReadingWords.text(limit.holds());
        return limit.probability()
                .map(some -> BenchUiWords.get(
                        "card.probability",
                        value,
                        Decimals.of(some.movePointRight(2).stripTrailingZeros())))
                .orElseGet(() -> BenchUiWords.get("card.no-probability", value));
    }

    private void work(Method method) {
        Method.Timing timing = method.timing();
        Facts facts = new Facts(card("card.work"), theme)
                .add(word("route"), ReadingWords.text(method.route()))
                .add(word("amounts"), amounts(method.amounts()))
                .add(
                        word("window"),
                        BenchUiWords.get(
                                "card.window",
                                span(timing.develop()),
                                span(timing.develop().plus(timing.window()))));
        timing.warmUp().ifPresent(some -> facts.add(word("warm-up"), BenchUiWords.get("card.at-least", span(some))));
        timing.shake().ifPresent(some -> facts.add(word("shake"), BenchUiWords.get("card.at-least", span(some))));
        timing.extractHold().ifPresent(some -> facts.add(word("hold"), BenchUiWords.get("card.at-most", span(some))));
        method.storage().ifPresent(range -> facts.add(word("storage"), range(range)));
        method.preChecks().forEach(check -> facts.add(check.name(), range(check.range())));
    }

    private static String amounts(Method.Amounts amounts) {
        return amounts.liquid()
                .map(liquid -> BenchUiWords.get("card.in-liquid", amounts.sample(), liquid))
                .orElse(amounts.sample().toString());
    }

    private static String range(Method.Range range) {
        return BenchUiWords.get(
                "card.range",
                Decimals.of(range.low()),
                Decimals.of(range.high()),
                range.unit().symbol());
    }

    private static String span(Duration span) {
        return Spans.words(span);
    }

    private void cautions(Method method) {
        Composite card = card("card.cautions");
        method.cautions().forEach(text -> caution(card, text));
        caution(card, BenchUiWords.get("card.insert-governs"));
    }

    private void caution(Composite card, String text) {
        Fit.wide(new MarkedLine(card, theme, new Mark("", Shape.TRIANGLE, Meaning.CAUTION), text));
    }

    /** Adds a card with a heading. */
    Composite card(String heading) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, BenchUiWords.get(heading));
        return card;
    }

    private static String word(String name) {
        return BenchUiWords.get("card.fact." + name);
    }
}
