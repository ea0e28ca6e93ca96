package wickbench.ledger.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.check.Complaint;
import wickbench.api.method.Method;
import wickbench.api.reading.Strip;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.acts.Correcting;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The form in which somebody says what was otherwise about a strip; what is left as it was is not said anew. */
final class CorrectForm {
    private static final List<String> COLUMNS = List.of(
            "sample",
            "place",
            "line",
            "batch",
            "reason",
            "visual",
            "area_cm2",
            "dilution",
            "control",
            "lot",
            "operator",
            "out_of_fridge",
            "extracted",
            "shaken_s",
            "started",
            "read");
    private static final Set<String> TIMES = Set.of("out_of_fridge", "extracted", "started", "read");
    private static final String SEEN = "seen";

    private final Composite parent;
    private final PageContext context;
    private final ZoneId zone;
    private final Strip strip;
    private final Correcting door;
    private final Map<String, String> before;
    private final Map<String, Field<Text>> fields = new LinkedHashMap<>();
    private final StripDrawing lines;

    CorrectForm(Composite parent, PageContext context, ZoneId zone, ResultDetail result, Correcting door) {
        this.parent = parent;
        this.context = context;
        this.zone = zone;
        this.door = door;
        strip = result.reading().reading().strip();
        before = new LinkedHashMap<>(door.said(result));
        TIMES.forEach(column -> before.computeIfPresent(column, (name, time) -> local(time)));
        Theme theme = context.theme();
        theme.controls()
                .text(
                        parent,
                        Type.HEADING,
                        LedgerUiWords.get("correct.title", result.row().sample()));
        Fit.wide(new Note(parent, theme, Meaning.NOTICE, LedgerUiWords.get("correct.note")));
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        lines = lines(card, theme, result.reading().method());
        Form form = new Form(card, theme);
        COLUMNS.forEach(column -> fields.put(column, field(form, column)));
    }

    private StripDrawing lines(Composite card, Theme theme, Method method) {
        StripDrawing drawing = new StripDrawing(card, theme, StripSize.MIDDLE);
        drawing.strip(method.format(), method.marks());
        drawing.answers(strip.lines());
        drawing.editable(true);
        drawing.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
        return drawing;
    }

    private Field<Text> field(Form form, String column) {
        Field<Text> field = form.text(LedgerUiWords.get("correct." + column));
        field.control().setText(before.getOrDefault(column, ""));
        return field;
    }

    /** Times are shown by the site's clock. */
    private String local(String time) {
        return time.isEmpty()
                ? ""
                : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        Instant.parse(time).atZone(zone));
    }

    /**
     * Adds the buttons.
     *
     * @param sign takes what was changed, by the columns of a run sheet
     */
    void buttons(Runnable cancel, Consumer<Map<String, String>> sign) {
        Composite row = Fit.right(context.theme().controls().box(parent, 2));
        context.theme().controls().button(row, LedgerUiWords.get("correct.cancel"), cancel);
        context.theme().controls().mainButton(row, LedgerUiWords.get("correct.go"), () -> {
            Map<String, String> changed = changed();
            fields.values().forEach(Field::clear);
            if (changed.isEmpty()) {
                context.say(LedgerUiWords.get("correct.nothing"));
            } else if (!lines.complete()) {
                context.say(LedgerUiWords.get("correct.lines"));
            } else {
                sign.accept(changed);
            }
        });
    }

    private Map<String, String> changed() {
        Map<String, String> changed = new LinkedHashMap<>();
        fields.forEach((column, field) -> {
            String now = field.control().getText().strip();
            if (!now.equals(before.getOrDefault(column, ""))) {
                changed.put(column, now);
            }
        });
        if (!lines.answers().equals(strip.lines())) {
            changed.put(SEEN, door.seen(new Strip(strip.format(), lines.answers())));
        }
        return changed;
    }

    /** Says below a field what is wrong with it, and returns the same in one line. */
    String complain(Complaint cell) {
        Field<Text> field = fields.get(cell.field());
        if (field == null) {
            return cell.text();
        }
        context.update(() -> field.complain(cell.text()));
        return LedgerUiWords.get("correct." + cell.field()) + ": " + cell.text();
    }

    void focus() {
        lines.setFocus();
    }
}
