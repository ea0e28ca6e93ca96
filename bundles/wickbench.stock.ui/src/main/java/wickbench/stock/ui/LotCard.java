package wickbench.stock.ui;

import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.stock.Balance;
import wickbench.stock.Companion;
import wickbench.stock.Happening;
import wickbench.stock.Lot;
import wickbench.stock.StockTerms;
import wickbench.widgets.Badge;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One lot in full: how it stands, what is left of it, what is due, and everything that was done with it. */
record LotCard(Composite parent, Theme theme, LotDesk.Shown shown) {
    private static final int SHORT = 60;

    /** @param acts adds below the head what can be done with the lot */
    void fill(Consumer<Composite> acts) {
        Lot lot = shown.lot();
        Composite head = Fit.wide(theme.controls().box(parent, 2));
        theme.controls().label(head, Type.HEADING, lot.id().value());
        new Badge(head, theme, new LotTable(shown.known().today()).state(lot));
        Label kit = theme.controls().text(parent, Type.BODY, lot.kit().name());
        kit.setForeground(theme.color(theme.palette().quiet()));
        acts.accept(parent);
        minded(lot);
        dates(lot);
        balance(lot);
        history();
    }

    private void minded(Lot lot) {
        lot.clashes().forEach(clash -> note(Meaning.ALARM, StockUiWords.get("card.clash", StockTerms.clash(clash))));
        if (shown.differs()) {
            note(Meaning.ALARM, StockUiWords.get("card.clashing"));
        }
        lot.quarantines()
                .forEach(held -> note(
                        Meaning.CAUTION,
                        StockUiWords.get(
                                "card.held",
                                minute(held.at()),
                                StockTerms.cause(held.cause()),
                                held.reason().isBlank() ? held.entry() : held.reason())));
        if (lot.otherInsert()) {
            note(
                    Meaning.CAUTION,
                    StockUiWords.get("card.insert", lot.insert().orElseThrow(), String.join(", ", lot.inserts())));
        }
        if (lot.unrecordedPouches() > 0) {
            note(Meaning.NOTICE, StockUiWords.get("card.unsaid", lot.unrecordedPouches()));
        }
        shown.due()
                .forEach(due -> Fit.wide(new MarkedLine(
                        parent,
                        theme,
                        new Mark("", Shape.SQUARE, Meaning.NOTICE),
                        StockUiWords.get("card.due", due.day(), StockTerms.due(due)))));
    }

    private void note(Meaning meaning, String text) {
        Fit.wide(new Note(parent, theme, meaning, text));
    }

    private void dates(Lot lot) {
        Facts facts = new Facts(card("card.dates"), theme)
                .add(word("label"), lot.label().toString())
                .add(word("effective"), StockUiWords.get("card.because." + lot.why(), lot.effective()))
                .add(word("received"), minute(lot.received()))
                .add(word("checked"), checked(lot))
                .add(word("opened"), lot.opened().map(this::minute).orElse(StockUiWords.get("card.never")));
        lot.pouch().ifPresent(at -> facts.add(word("pouch"), minute(at)));
        lot.place().ifPresent(place -> facts.add(word("place"), place));
        facts.add(word("insert"), lot.insert().orElse(StockUiWords.get("card.unstated")));
        lot.companions().forEach(with -> facts.add(with.part(), companion(with)));
    }

    private String checked(Lot lot) {
        return lot.checked()
                .map(at -> lot.waived() ? StockUiWords.get("card.waived", minute(at)) : minute(at))
                .orElse(StockUiWords.get("card.never"));
    }

    private static String companion(Companion with) {
        return with.expiry()
                .map(day -> StockUiWords.get("card.companion-until", with.lot(), day))
                .orElseGet(() -> StockUiWords.get("card.companion", with.lot()));
    }

    private void balance(Lot lot) {
        Composite grid = Fit.wide(theme.controls().box(card("card.balance"), 4));
        for (String head : new String[] {"part", "sealed", "open", "left"}) {
            Label label = theme.controls().quiet(grid, StockUiWords.get("balance." + head));
            cell(label, !head.equals("part"));
        }
        lot.parts().forEach(part -> row(grid, part));
        lot.parts().stream()
                .filter(part -> part.missing().signum() > 0)
                .forEach(part -> note(
                        Meaning.CAUTION,
                        StockUiWords.get(
                                "card.missing",
                                LotTable.plain(part.missing()),
                                part.part().unit(),
                                part.part().name())));
    }

    private void row(Composite grid, Balance part) {
        cell(theme.controls().label(grid, Type.BODY, part.part().name()), false);
        cell(theme.controls().label(grid, Type.BODY, LotTable.plain(part.sealed())), true);
        cell(theme.controls().label(grid, Type.BODY, LotTable.plain(part.open())), true);
        String left = StockUiWords.get(
                "balance.amount", LotTable.plain(part.left()), part.part().unit());
        cell(theme.controls().label(grid, Type.STRONG, left), true);
    }

    private static void cell(Label label, boolean right) {
        label.setLayoutData(new GridData(right ? SWT.END : SWT.BEGINNING, SWT.CENTER, !right, false));
        label.setAlignment(right ? SWT.RIGHT : SWT.LEFT);
    }

    private void history() {
        Composite card = card("card.history");
        for (int i = shown.history().size() - 1; i >= 0; i--) {
            happening(card, shown.history().get(i));
        }
    }

    private void happening(Composite card, Happening each) {
        theme.controls()
                .text(
                        card,
                        Type.BODY,
                        StockUiWords.get(
                                each.signed() ? "card.signed" : "card.happened",
                                minute(each.at()),
                                StockTerms.act(each.entry().kind()),
                                shown.known().rights().who(each.entry().by())));
        String facts = said(each.facts());
        if (!facts.isEmpty()) {
            Label small = theme.controls().text(card, Type.SMALL, facts);
            small.setForeground(theme.color(theme.palette().quiet()));
        }
    }

    /** The reason first; lists and long ones are for the journal. */
    private static String said(Map<String, String> facts) {
        return facts.entrySet().stream()
                .filter(fact ->
                        fact.getKey().equals("reason") || fact.getValue().length() <= SHORT)
                .filter(fact ->
                        !fact.getValue().startsWith("[") && !fact.getValue().startsWith("{"))
                .sorted((one, other) -> Boolean.compare(
                        other.getKey().equals("reason"), one.getKey().equals("reason")))
                .map(fact -> fact.getKey().equals("reason")
                        ? StockUiWords.get("card.why", fact.getValue())
                        : fact.getKey().replace('_', ' ') + " " + fact.getValue())
                .collect(Collectors.joining(" \u00b7 "));
    }

    private Composite card(String heading) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, StockUiWords.get(heading));
        return card;
    }

    private String minute(java.time.Instant at) {
        return shown.known().times().minute(at);
    }

    private static String word(String name) {
        return StockUiWords.get("fact." + name);
    }
}
