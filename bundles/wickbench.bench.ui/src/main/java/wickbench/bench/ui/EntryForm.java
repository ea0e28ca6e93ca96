package wickbench.bench.ui;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.Method;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;

/** The fields of one strip; what stands in them is read and put by {@link Item}. */
final class EntryForm {
    private final Map<Item, Slot> slots = new EnumMap<>(Item.class);
    private final Map<Item, PickField> picks = new EnumMap<>(Item.class);
    private final Composite box;
    private final PreCheckFields preChecks;
    private final Runnable changed;
    private final Theme theme;

    /**
     * Makes the fields.
     *
     * @param over what lists may drop over
     * @param changed hears of every change
     */
    EntryForm(Composite parent, Composite over, Theme theme, Runnable changed) {
        this.theme = theme;
        this.changed = changed;
        box = Fit.wide(theme.controls().box(parent, 1));
        strip(new FormGrid(box, over, theme, BenchUiWords.get("form.strip")));
        preChecks = new PreCheckFields(
                sample(new FormGrid(box, over, theme, BenchUiWords.get("form.sample"))), theme, changed);
        times(new FormGrid(box, over, theme, BenchUiWords.get("form.times")));
        clean(new FormGrid(box, over, theme, BenchUiWords.get("form.clean")));
        slots.values().forEach(this::listen);
    }

    Composite control() {
        return box;
    }

    private void strip(FormGrid grid) {
        slots.put(Item.METHOD, grid.pick(grid.whole(), Item.METHOD, made -> picks.put(Item.METHOD, made)));
        List<Form> row = grid.halves();
        slots.put(Item.OPERATOR, grid.pick(row.get(0), Item.OPERATOR, made -> picks.put(Item.OPERATOR, made)));
        slots.put(Item.LOT, grid.pick(row.get(1), Item.LOT, made -> picks.put(Item.LOT, made)));
        slots.put(
                Item.OBSERVER, grid.pick(grid.halves().get(0), Item.OBSERVER, made -> picks.put(Item.OBSERVER, made)));
    }

    private Composite sample(FormGrid grid) {
        List<Form> row = grid.halves();
        slots.put(Item.SAMPLE, grid.text(row.get(0), Item.SAMPLE));
        slots.put(Item.LINE, grid.text(row.get(1), Item.LINE));
        slots.put(Item.PLACE, grid.text(grid.whole(), Item.PLACE));
        row = grid.halves();
        slots.put(Item.REASON, grid.choice(row.get(0), Item.REASON, Arrays.asList(Reason.values())));
        slots.put(Item.REASON_TEXT, grid.text(row.get(1), Item.REASON_TEXT));
        row = grid.halves();
        slots.put(Item.BATCH, grid.text(row.get(0), Item.BATCH));
        slots.put(Item.VISUAL, grid.choice(row.get(1), Item.VISUAL, Arrays.asList(Visual.values())));
        row = grid.halves();
        slots.put(Item.DILUTION, grid.text(row.get(0), Item.DILUTION));
        slots.put(Item.AREA, grid.text(row.get(1), Item.AREA));
        slots.put(Item.CONTROL, grid.choice(grid.halves().get(0), Item.CONTROL, Arrays.asList(RunControl.values())));
        return grid.card();
    }

    private void times(FormGrid grid) {
        List<Form> row = grid.halves();
        slots.put(Item.OUT_OF_FRIDGE, grid.text(row.get(0), Item.OUT_OF_FRIDGE));
        slots.put(Item.EXTRACTED, grid.text(row.get(1), Item.EXTRACTED));
        slots.put(Item.SHAKEN, grid.text(grid.halves().get(0), Item.SHAKEN));
    }

    private void clean(FormGrid grid) {
        slots.put(Item.CLEAN, grid.text(grid.whole(), Item.CLEAN));
        List<Form> row = grid.halves();
        slots.put(Item.CLEANED_BY, grid.text(row.get(0), Item.CLEANED_BY));
        slots.put(Item.CLEANED_AT, grid.text(row.get(1), Item.CLEANED_AT));
    }

    private void listen(Slot slot) {
        slot.control().addListener(SWT.Modify, event -> changed.run());
        // a complaint waits until one has left the field
        slot.control().addListener(SWT.FocusOut, event -> changed.run());
    }

    void picks(List<Pick> people, List<Pick> methods) {
        picks.get(Item.OPERATOR).picks(people);
        picks.get(Item.OBSERVER).picks(people);
        picks.get(Item.METHOD).picks(methods);
    }

    /** Offers the methods, with what speaks against some of them. */
    void methods(List<Pick> methods) {
        picks.get(Item.METHOD).picks(methods);
    }

    List<Pick> offered(Item item) {
        return picks.get(item).offered();
    }

    /** Offers the lots that are fit, first expired first; what is not among them may be typed all the same. */
    void lots(List<Pick> lots) {
        picks.get(Item.LOT).picks(lots);
    }

    Control control(Item item) {
        return slots.get(item).control();
    }

    String text(Item item) {
        return slots.get(item).read().get();
    }

    /** Returns what stands below a field. */
    String said(Item item) {
        return slots.get(item).field().said();
    }

    void put(Item item, String text) {
        slots.get(item).write().accept(text);
    }

    Map<Item, String> texts() {
        Map<Item, String> texts = new EnumMap<>(Item.class);
        slots.forEach((item, slot) -> texts.put(item, slot.read().get()));
        return texts;
    }

    void preChecks(Map<String, String> texts) {
        preChecks.put(texts);
    }

    Map<String, String> preChecks() {
        return preChecks.texts();
    }

    /** Shows what the method asks for: the area of swabs only, and its checks of the sample. */
    void method(Optional<Method> method) {
        boolean swab = method.filter(by -> by.route().swab()).isPresent();
        Slot area = slots.get(Item.AREA);
        enabled(area.control(), swab);
        preChecks.show(method.map(Method::preChecks).orElse(List.of()));
    }

    /** Says beside its field what is wrong, and what the chosen person and method are. */
    void say(FormCheck check, Optional<Method> method) {
        slots.forEach((item, slot) -> slot.say(check.wrong().getOrDefault(item, ""), hint(item, method)));
        preChecks.say(check.wrongChecks());
    }

    private String hint(Item item, Optional<Method> method) {
        return switch (item) {
            case OPERATOR -> picks.get(Item.OPERATOR).chosen().map(Pick::words).orElse("");
            case METHOD -> method.map(EntryForm::words).orElse("");
            case AREA -> method.map(EntryForm::area).orElse("");
            default -> "";
        };
    }

    private static String area(Method method) {
        return method.route().swab()
                ? BenchUiWords.get("area.unless", method.amounts().sample())
                : BenchUiWords.get("area.swabs-only");
    }

    private static String words(Method method) {
        return BenchUiWords.get(
                "method.hint",
                method.title(),
                ReadingWords.text(method.route()),
                method.ref().version());
    }

    /** Opens the fields, or closes them; closed ones keep what stands in them, in quieter ink. */
    void enabled(boolean may) {
        slots.values().forEach(slot -> enabled(slot.control(), may));
        preChecks.controls().forEach(control -> enabled(control, may));
    }

    private void enabled(Control control, boolean may) {
        control.setEnabled(may);
        control.setForeground(
                theme.color(may ? theme.palette().ink() : theme.palette().quiet()));
    }
}
