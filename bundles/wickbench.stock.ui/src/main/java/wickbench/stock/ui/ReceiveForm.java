package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.lot.LotId;
import wickbench.shell.ActForm;
import wickbench.shell.PageContext;
import wickbench.stock.Companion;
import wickbench.stock.Delivery;
import wickbench.stock.Kit;
import wickbench.stock.Lot;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** Takes a delivery in: scanned or typed. What a scan means stands there before anything is recorded; what is doubtful is asked. */
final class ReceiveForm {
    private final PageContext context;
    private final StockDoors doors;
    private final LotDesk.Known known;
    private final Runnable grown;
    private final int year;
    private Field<Text> scan;
    private Composite meaning;
    private Field<Combo> kit;
    private Field<Text> lot;
    private Field<Text> expiry;
    private Field<Text> boxes;
    private InsertField insert;
    private Field<Combo> fridge;
    private CompanionFields companions;
    private Optional<ScanReading> read = Optional.empty();

    ReceiveForm(PageContext context, StockDoors doors, LotDesk.Known known, Runnable grown) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.grown = grown;
        this.year = known.today().getYear();
    }

    void fill(Composite parent, Runnable leave, Consumer<Lot> done) {
        ActForm form = Forms.begin(parent, context, "receive", grown, leave);
        scan = form.text("receive.scan");
        // a scanner ends with Enter, which must not take the box in before anybody has looked
        removeEnter(scan.control());
        scan.control().addListener(SWT.DefaultSelection, event -> look());
        scan.control().addListener(SWT.KeyDown, ReceiveForm::separator);
        scan.hint(StockUiWords.get("receive.scan.hint"));
        kit = form.choice("receive.kit", known.kits().stream().map(Kit::name).toList());
        lot = form.text("receive.lot");
        expiry = form.text("receive.expiry");
        boxes = form.text("receive.boxes", "1");
        insert = new InsertField(form.text("receive.insert"), grown);
        fridge = form.choice("receive.fridge", known.fridges());
        companions = new CompanionFields(form);
        kit.control().addListener(SWT.Selection, event -> chose());
        if (known.kits().size() == 1) {
            kit.control().select(0);
            chose();
        }
        if (known.fridges().size() == 1) {
            fridge.control().select(0);
        }
        meaning = Fit.wide(context.theme().controls().box(form.card(), 1));
        ((GridData) meaning.getLayoutData()).exclude = true;
        form.act("receive.act", known.rights().may(Act.KEEP_STOCK), this::collect, done);
        form.focus();
    }

    private static void removeEnter(Text field) {
        for (var listener : field.getListeners(SWT.DefaultSelection)) {
            field.removeListener(SWT.DefaultSelection, listener);
        }
    }

    /** Shows the separator that a scanner sends as a control character, which a field would drop. */
    private static void separator(Event event) {
        if (event.character == 29) {
            event.doit = false;
            ((Text) event.widget).insert("\u241d");
        }
    }

    private void look() {
        read = Typed.some(scan).map(text -> ScanReading.of(text, year));
        for (Control old : meaning.getChildren()) {
            old.dispose();
        }
        read.ifPresent(this::show);
        ((GridData) meaning.getLayoutData()).exclude = read.isEmpty();
        meaning.setVisible(read.isPresent());
        meaning.moveBelow(scan.control().getParent());
        meaning.requestLayout();
        grown.run();
    }

    private void show(ScanReading found) {
        context.theme().controls().label(meaning, Type.STRONG, StockUiWords.get("receive.means"));
        found.lines()
                .forEach(
                        line -> new MarkedLine(meaning, context.theme(), new Mark("", Shape.RING, Meaning.CALM), line));
        found.questions()
                .forEach(doubt -> new MarkedLine(
                        meaning,
                        context.theme(),
                        new Mark(StockUiWords.get("receive.doubt"), Shape.DIAMOND, Meaning.CAUTION),
                        doubt));
        for (Control line : meaning.getChildren()) {
            Fit.wide(line);
        }
        found.gtin().ifPresent(this::kit);
        found.lot().ifPresent(lot.control()::setText);
        found.expiry().map(LocalDate::toString).ifPresent(expiry.control()::setText);
        next().setFocus();
    }

    private void kit(String gtin) {
        Optional<Kit> of = known.kits().stream()
                .filter(each -> each.gtins().contains(gtin))
                .findFirst();
        of.ifPresentOrElse(
                found -> {
                    kit.control().setText(found.name());
                    kit.clear();
                    chose();
                },
                () -> kit.complain(StockUiWords.get("receive.unknown-gtin", gtin)));
    }

    /** The first field that still wants something, else the number of boxes. */
    private Control next() {
        if (kit.control().getSelectionIndex() < 0) {
            return kit.control();
        }
        return List.of(lot, expiry).stream()
                .map(Field::control)
                .filter(field -> field.getText().isBlank())
                .findFirst()
                .orElse(boxes.control());
    }

    private Optional<Kit> chosen() {
        int at = kit.control().getSelectionIndex();
        return at < 0 ? Optional.empty() : Optional.of(known.kits().get(at));
    }

    /** What depends on the kit: its insert, and the parts that may have a lot of their own. */
    private void chose() {
        companions.of(chosen());
        insert.against(chosen().map(Kit::name).map(known.inserts()::get).orElse(List.of()));
    }

    private Optional<Work<Lot>> collect() {
        if (read.isEmpty() && Typed.some(scan).isPresent()) {
            look();
        }
        Optional<Kit> of = chosen();
        if (of.isEmpty()) {
            kit.complain(StockUiWords.get("receive.which-kit"));
        } else {
            kit.clear();
        }
        Optional<String> number = agreed(lot, Typed.words(lot), read.flatMap(ScanReading::lot));
        Optional<LocalDate> day = agreed(expiry, Typed.date(expiry), read.flatMap(ScanReading::expiry));
        Optional<Integer> count = Typed.whole(boxes, 1);
        Optional<List<Companion>> with = companions.collect();
        if (of.isEmpty() || number.isEmpty() || day.isEmpty() || count.isEmpty() || with.isEmpty() || !insert.said()) {
            return Optional.empty();
        }
        Optional<String> revision = insert.revision();
        Optional<String> place = Optional.of(fridge.control().getText()).filter(id -> !id.isEmpty());
        return Optional.of(progress -> doors.keeping()
                .receive(
                        new Delivery(
                                of.get().name(),
                                new LotId(number.get()),
                                day.get(),
                                count.get(),
                                doors.clock().instant(),
                                revision,
                                read.flatMap(ScanReading::serial),
                                read.flatMap(ScanReading::produced),
                                place,
                                with.get(),
                                read.flatMap(ScanReading::text)),
                        known.rights().by()));
    }

    /** What was typed must be what was scanned. */
    private static <T> Optional<T> agreed(Field<Text> field, Optional<T> typed, Optional<T> scanned) {
        if (typed.isPresent() && scanned.isPresent() && !typed.equals(scanned)) {
            field.complain(StockUiWords.get("receive.differs", typed.get(), scanned.get()));
            return Optional.empty();
        }
        return typed;
    }

    /** Returns the field into which one scans. */
    Text scanField() {
        return scan.control();
    }
}
