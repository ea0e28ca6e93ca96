package wickbench.shell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.widgets.Badge;
import wickbench.widgets.Column;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Glyph;
import wickbench.widgets.Heading;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.RowSource;
import wickbench.widgets.Scroller;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A page with one of everything, to be looked at. */
final class SamplePage implements Page {
    record Result(String id, String when, String place, String target, Outcome outcome, String by) {}

    private final String title;

    SamplePage(String title) {
        this.title = title;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public Glyph glyph() {
        return pen ->
                pen.box(4, 4, 16, 16, 2).line(8, 9, 16, 9).line(8, 13, 16, 13).line(8, 17, 13, 17);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        Theme theme = context.theme();
        Controls controls = theme.controls();
        Composite page = controls.box(parent, 2);
        ((GridLayout) page.getLayout()).horizontalSpacing = theme.metrics().grid(2);
        Composite head = Fit.wide(controls.box(page, 1), 2);
        Heading heading = new Heading(head, theme, "Results", "What was read, judged and recorded at this station.");
        ((GridLayout) heading.actions().getLayout()).numColumns = 2;
        controls.button(heading.actions(), "&Export", () -> {});
        controls.mainButton(heading.actions(), "&New run", () -> {});
        TableKit<Result> table = new TableKit<>(page, context, spec());
        Fit.grow(table.control());
        Scroller scroller = new Scroller(page, theme);
        GridData wide = new GridData(SWT.FILL, SWT.FILL, false, true);
        wide.widthHint = theme.px(440);
        scroller.control().setLayoutData(wide);
        side(Fit.wide(controls.card(scroller.content(), 1)), theme);
        table.onLoaded(() -> {
            if (table.selected().isEmpty()) {
                table.select(table.rows().get(3));
            }
            context.ready();
        });
        return new PagePart() {
            @Override
            public void shown() {
                table.focus();
            }
        };
    }

    private static void side(Composite card, Theme theme) {
        Controls controls = theme.controls();
        controls.label(card, Type.HEADING, "Rinse 4, filler head");
        Composite badges = controls.row(card);
        for (Outcome outcome : Outcome.values()) {
            new Badge(badges, theme, Mark.of(outcome));
        }
        StripDrawing strip = new StripDrawing(card, theme, StripSize.LARGE);
        strip.strip(Format.SANDWICH_HOOK, Map.of(LineRole.CONTROL, "C", LineRole.HOOK, "H", LineRole.TEST, "T"));
        strip.answers(Map.of(LineRole.CONTROL, Seen.SEEN, LineRole.TEST, Seen.FAINT));
        strip.editable(true);
        Composite small = controls.box(card, 4);
        for (Seen seen : Seen.values()) {
            StripDrawing one = new StripDrawing(small, theme, StripSize.SMALL);
            one.strip(Format.SANDWICH, Map.of());
            one.answers(Map.of(LineRole.CONTROL, Seen.SEEN, LineRole.TEST, seen));
        }
        Form form = new Form(card, theme);
        form.text("Sample").control().setText("R-0412");
        form.text("Extracted").complain("Expected a time such as 08:40.");
        form.choice("Route", List.of("rinse", "swab, dry")).control().select(0);
        Fit.wide(new Note(card, theme, Meaning.CAUTION, "A two-line strip cannot tell a hook effect from a negative."));
        controls.check(card, "Photograph taken").setSelection(true);
        controls.label(card, Type.LARGE, "0:48").setAlignment(SWT.LEFT);
    }

    static TableSpec<Result> spec() {
        List<Column<Result>> columns = List.of(
                Column.of("id", "Sample", 90, Result::id),
                Column.of("when", "Read", 130, Result::when),
                Column.of("place", "Place", 150, Result::place),
                Column.of("target", "Target", 90, Result::target),
                Column.marked("outcome", "Outcome", 170, row -> Mark.of(row.outcome())),
                Column.<Result>of("by", "By", 60, Result::by).rightAligned(),
                Column.of("hidden", "Method", 90, (Result row) -> "m-" + row.id())
                        .hidden());
        List<Result> rows = IntStream.range(0, 640)
                .mapToObj(i -> new Result(
                        "R-" + (400 + i),
                        String.format("2026-03-%02d %02d:%02d", 1 + i % 28, 6 + i % 12, i % 60),
                        List.of("Filler head", "Belt 2, transfer", "Hopper B", "Slicer guard")
                                .get(i % 4),
                        List.of("hazelnut", "milk", "egg").get(i % 3),
                        Outcome.values()[i % 11 == 0 ? 1 : i % 17 == 0 ? 2 : i % 13 == 0 ? 3 : 0],
                        "op" + i % 9))
                .toList();
        return new TableSpec<>(
                "sample.results",
                "Results",
                columns,
                RowSource.of(rows, columns),
                Optional.empty(),
                "Nothing was read yet.");
    }
}
