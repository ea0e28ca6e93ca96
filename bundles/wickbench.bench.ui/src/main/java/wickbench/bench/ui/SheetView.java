package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.reading.RecordedReading;
import wickbench.widgets.Controls;
import wickbench.widgets.Desk;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Type;

/** The controls of a whole sheet. */
final class SheetView {
    private static final int SIDE = 340;

    private final Desk desk;
    private final Composite box;
    private final Label name;
    private final Label counts;
    private final Composite said;
    private final Composite body;
    private final Button record;
    private Optional<TableKit<?>> table = Optional.empty();

    SheetView(Composite parent, Desk desk, Runnable toRecord, Runnable toClose) {
        this.desk = desk;
        Controls controls = desk.theme().controls();
        box = controls.box(parent, 1);
        Composite top = Fit.wide(controls.box(box, 3));
        Composite words = Fit.wide(controls.box(top, 1));
        name = Fit.wide(controls.label(words, Type.HEADING, ""));
        counts = controls.text(words, Type.BODY, "");
        controls.button(top, BenchUiWords.get("sheet.close"), toClose);
        record = controls.mainButton(top, BenchUiWords.get("sheet.record", 0), toRecord);
        said = Fit.wide(controls.box(box, 1));
        body = Fit.grow(controls.box(box, 2));
        record.setEnabled(false);
    }

    Composite control() {
        return box;
    }

    Optional<TableKit<?>> table() {
        return table;
    }

    Button recordButton() {
        return record;
    }

    void loading(String file) {
        name.setText(file);
        counts.setText(BenchUiWords.get("sheet.loading"));
        clear(said);
        clear(body);
        box.layout(true, true);
    }

    void show(SheetRead sheet, SiteClock clock) {
        name.setText(sheet.name());
        counts.setText(
                sheet.good()
                        ? BenchUiWords.get("sheet.counts", sheet.readings().size(), sheet.counts())
                        : BenchUiWords.get("sheet.wrong"));
        clear(said);
        clear(body);
        if (sheet.good()) {
            strips(sheet, clock);
        } else {
            note(
                    Meaning.CAUTION,
                    BenchUiWords.get("sheet.refused", sheet.complaints().size()));
            put(SheetTables.complaints(sheet));
        }
        box.layout(true, true);
    }

    private void strips(SheetRead sheet, SiteClock clock) {
        TableKit<RecordedReading> kit = put(SheetTables.strips(sheet, clock));
        Scroller side = new Scroller(body, desk.theme());
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = desk.theme().px(SIDE);
        side.control().setLayoutData(data);
        VerdictPanel verdict = new VerdictPanel(side.content(), desk.theme());
        verdict.waiting(BenchUiWords.get("sheet.select"));
        kit.onSelect(rows -> {
            chosen(rows, verdict);
            side.measure();
        });
        kit.onLoaded(() -> kit.rows().stream().findFirst().ifPresent(kit::select));
    }

    private static void chosen(List<RecordedReading> rows, VerdictPanel verdict) {
        rows.stream()
                .findFirst()
                .ifPresentOrElse(verdict::show, () -> verdict.waiting(BenchUiWords.get("sheet.select")));
    }

    private <T> TableKit<T> put(TableSpec<T> spec) {
        TableKit<T> kit = new TableKit<>(body, desk, spec);
        Fit.grow(kit.control());
        table = Optional.of(kit);
        return kit;
    }

    /** Says what came of recording. */
    void kept(String words) {
        note(Meaning.NOTICE, words);
    }

    /** Says why there is nothing to show. */
    void failed(String words) {
        counts.setText(BenchUiWords.get("sheet.wrong"));
        clear(body);
        Fit.grow(EmptyState.failure(body, desk.theme(), words, Optional.empty()));
        box.layout(true, true);
    }

    void mayRecord(int readings, boolean may) {
        record.setText(BenchUiWords.get(readings == 1 ? "sheet.record-one" : "sheet.record", readings));
        record.setEnabled(may);
        record.getParent().layout();
    }

    private void note(Meaning meaning, String words) {
        clear(said);
        Fit.wide(new Note(said, desk.theme(), meaning, words));
        box.layout(true, true);
    }

    private static void clear(Composite some) {
        for (Control old : some.getChildren()) {
            old.dispose();
        }
    }
}
