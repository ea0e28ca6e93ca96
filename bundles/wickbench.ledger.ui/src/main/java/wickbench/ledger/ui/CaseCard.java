package wickbench.ledger.ui;

import java.time.Instant;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.owed.OwedItem;
import wickbench.api.reading.Outcome;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.Taken;
import wickbench.ledger.ui.ActSheets.Choice;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One case: its product, what it owes, what was decided, and what may be decided next. */
record CaseCard(Composite parent, Theme theme, ActDoors.Known known, Instant now) {

    /** Shows the case without anything that can be done about it. */
    void facts(Case of) {
        head(of);
        products(of);
        owed(of);
        taken(of);
    }

    /** @param choose hears what the person wants to decide, before it is signed */
    void fill(Case of, Consumer<Choice> choose) {
        facts(of);
        new CaseChoice(card("case.decide"), theme, known).fill(of, choose);
    }

    private void head(Case of) {
        ResultRow row = of.result();
        theme.controls().text(parent, Type.HEADING, row.place());
        theme.controls()
                .text(
                        parent,
                        Type.BODY,
                        row.sample() + " \u00b7 " + row.method() + " \u00b7 "
                                + known.times().minute(row.happened()));
        Fit.wide(new Badge(parent, theme, Type.LARGE, outcome(row)));
        if (of.clash()) {
            Fit.wide(new Note(parent, theme, Meaning.ALARM, LedgerUiWords.get("case.clash")));
        }
        theme.controls()
                .text(
                        parent,
                        Type.BODY,
                        of.lastGood()
                                .map(good -> LedgerUiWords.get(
                                        "case.last-good", known.times().minute(good.at())))
                                .orElseGet(() -> LedgerUiWords.get("case.no-last-good")));
    }

    /** A Negative that something is owed for is no calm sight. */
    private static Mark outcome(ResultRow row) {
        Mark mark = Mark.of(row.outcome(), row.dilution());
        return row.outcome() == Outcome.NEGATIVE
                ? new Mark(LedgerUiWords.get("case.in-question", mark.word()), Shape.TRIANGLE, Meaning.CAUTION)
                : mark;
    }

    private void products(Case of) {
        Composite card = card("case.product");
        of.products()
                .forEach(product -> Fit.wide(new MarkedLine(
                        card,
                        theme,
                        CaseTable.mark(product.state()),
                        LedgerUiWords.get("case.product-line", name(product), CaseTable.age(product.since(), now)))));
        of.cause().ifPresent(cause -> theme.controls().text(card, Type.BODY, LedgerUiWords.get("case.cause", cause)));
    }

    private static String name(Product product) {
        return product.name().isEmpty() ? LedgerUiWords.get("case.unnamed") : product.name();
    }

    private void owed(Case of) {
        Composite card = card("case.owed");
        of.owed().forEach(item -> Fit.wide(new MarkedLine(card, theme, mark(item), line(item))));
        of.outside().forEach(report -> new OutsideLines(theme, known.times()).line(card, report));
        if (of.owed().isEmpty() && of.outside().isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("case.owes-nothing"));
        }
    }

    private static Mark mark(OwedItem item) {
        return item.done()
                ? new Mark(LedgerUiWords.get("case.done"), Shape.RING, Meaning.CALM)
                : new Mark(LedgerUiWords.get("case.open"), Shape.TRIANGLE, Meaning.CAUTION);
    }

    private String line(OwedItem item) {
        String what = ReadingWords.text(item.step().owed());
        return item.done()
                ? LedgerUiWords.get("case.answered", what, item.answers().size())
                : LedgerUiWords.get("case.open-since", what, CaseTable.age(item.since(), now));
    }

    private void taken(Case of) {
        Composite card = card("case.taken");
        of.taken().forEach(each -> theme.controls().text(card, Type.BODY, line(each)));
        if (of.taken().isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("case.undecided"));
        }
    }

    private String line(Taken taken) {
        return LedgerUiWords.get(
                taken.stands() ? "case.decision" : "case.decision-lost",
                known.times().minute(taken.entry().at()),
                LedgerUiWords.get("move." + taken.decided().move().code()),
                known.people().full(taken.entry().by()),
                taken.decided().reason());
    }

    private Composite card(String heading) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, LedgerUiWords.get(heading));
        return card;
    }
}
