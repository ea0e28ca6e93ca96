package wickbench.stock.ui;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.words.Decimals;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges.Imported;
import wickbench.stock.StockTerms;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One fridge: its range, what was measured, and the lots inside. */
record FridgeCard(Composite parent, Theme theme, SiteTimes times) {

    /** Says what taking a file in has done. */
    void imported(Imported done, Consumer<String> lot) {
        Composite card = card("imported.title");
        String key = !done.added() ? "imported.known" : done.rows() == 0 ? "imported.typed" : "imported.rows";
        theme.controls()
                .text(
                        card,
                        Type.BODY,
                        StockUiWords.get(key, done.rows(), times.minute(done.from()), times.minute(done.to())));
        if (done.found().isEmpty()) {
            line(card, Shape.RING, Meaning.CALM, StockUiWords.get("imported.calm"));
        } else {
            line(
                    card,
                    Shape.TRIANGLE,
                    Meaning.ALARM,
                    StockUiWords.get("imported.found", done.found().size()));
        }
        if (!done.quarantined().isEmpty()) {
            Fit.wide(new Note(card, theme, Meaning.CAUTION, StockUiWords.get("imported.held")));
            done.quarantined()
                    .forEach(id -> theme.controls()
                            .buttonOfMany(card, StockUiWords.get("imported.lot", id), () -> lot.accept(id.value()))
                            .setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false)));
        }
    }

    void fill(FridgeTrace trace) {
        Fridge fridge = trace.fridge();
        theme.controls().text(parent, Type.HEADING, fridge.id() + ", " + fridge.name());
        Facts facts = new Facts(card("fridge.measured"), theme)
                .add(
                        word("range"),
                        StockUiWords.get("fridge.range", LotTable.plain(fridge.low()), LotTable.plain(fridge.high())))
                .add(word("logger"), fridge.logger().orElse(StockUiWords.get("fridge.no-logger")))
                .add(word("until"), fridge.until().map(times::minute).orElse(StockUiWords.get("card.never")))
                .add(word("readings"), Decimals.grouped(trace.readings()));
        trace.lowest().ifPresent(value -> facts.add(word("lowest"), degrees(value)));
        trace.highest().ifPresent(value -> facts.add(word("highest"), degrees(value)));
        trace.mean().ifPresent(value -> facts.add(word("mean"), degrees(value)));
        trace.kinetic().ifPresent(value -> facts.add(word("kinetic"), degrees(value)));
        Label caution = theme.controls().text(parent, Type.SMALL, StockTerms.kineticCaution());
        caution.setForeground(theme.color(theme.palette().quiet()));
        Composite lots = card("fridge.lots");
        if (fridge.lots().isEmpty()) {
            theme.controls().text(lots, Type.BODY, StockUiWords.get("fridge.empty"));
        } else {
            theme.controls().text(lots, Type.BODY, String.join(", ", fridge.lots()));
        }
    }

    private static String degrees(double value) {
        return StockUiWords.get("fridge.degrees", ExcursionTable.number(value));
    }

    private void line(Composite card, Shape shape, Meaning meaning, String text) {
        Fit.wide(new MarkedLine(card, theme, new Mark("", shape, meaning), text));
    }

    private Composite card(String heading) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, StockUiWords.get(heading));
        return card;
    }

    private static String word(String name) {
        return StockUiWords.get("fact.fridge." + name);
    }
}
