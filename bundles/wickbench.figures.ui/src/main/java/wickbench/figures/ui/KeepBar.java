package wickbench.figures.ui;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import wickbench.api.person.PersonId;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;
import wickbench.widgets.Type;

/** Keeps the answer as an entry, under the person at the desk, and lists what was kept of this sum before. */
final class KeepBar {
    private static final int LISTED = 200;
    private static final int FIELD = 560;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private final PageContext context;
    private final Theme theme;
    private final KeptSums kept;
    private final Sum sum;
    private final Consumer<KeptSums.Kept> reopen;
    private final Runnable grown;
    private final Field<Text> about;
    private final Button keep;
    private final Composite before;
    private Optional<Reckoned.Done> offered = Optional.empty();

    KeepBar(
            Composite parent,
            PageContext context,
            KeptSums kept,
            Sum sum,
            Consumer<KeptSums.Kept> reopen,
            Runnable grown) {
        this.context = context;
        this.kept = kept;
        this.sum = sum;
        this.reopen = reopen;
        this.grown = grown;
        theme = context.theme();
        Composite bar = Fit.wide(theme.controls().box(parent, 1));
        boolean keepable = !sum.inputs().isEmpty();
        bar.setVisible(keepable);
        ((GridData) bar.getLayoutData()).exclude = !keepable;
        Form form = new Form(bar, theme);
        Fit.width(form.grid(), theme.px(FIELD));
        about = form.text(FiguresUiWords.get("keep.about"));
        about.control().setTextLimit(500);
        about.control().setMessage(FiguresUiWords.get("keep.optional"));
        keep = theme.controls().mainButton(bar, FiguresUiWords.get("keep.keep"), this::keep);
        before = Fit.wide(theme.controls().box(bar, 1));
        actor();
        if (keepable) {
            list();
        }
    }

    /** Offers an answer to be kept, or none. */
    void offer(Optional<Reckoned.Done> done) {
        offered = done;
        actor();
    }

    /** Says why nothing can be kept, if so. */
    void actor() {
        boolean somebody = context.actor().isPresent();
        keep.setEnabled(somebody && offered.isPresent());
        if (somebody) {
            about.clear();
        } else {
            about.hint(FiguresUiWords.get("keep.sign-in"));
        }
        grown.run();
    }

    private void keep() {
        PersonId by = context.actor().orElseThrow();
        Reckoned.Done done = offered.orElseThrow();
        Optional<String> what = Optional.of(about.control().getText());
        keep.setEnabled(false);
        context.jobs()
                .run(
                        FiguresUiWords.get("keep.keeping"),
                        progress -> kept.keep(by, sum, done, what),
                        entry -> {
                            context.say(FiguresUiWords.get("keep.kept", entry));
                            about.control().setText("");
                            actor();
                            list();
                        },
                        failure -> {
                            actor();
                            about.complain(failure.getMessage());
                        });
    }

    private void list() {
        context.jobs()
                .run(
                        FiguresUiWords.get("kept.reading"),
                        progress -> kept.newest(LISTED).stream()
                                .filter(each -> each.what().sum().equals(sum.id()))
                                .toList(),
                        this::list);
    }

    private void list(List<KeptSums.Kept> found) {
        if (before.isDisposed()) {
            return;
        }
        for (Control child : before.getChildren()) {
            child.dispose();
        }
        if (!found.isEmpty()) {
            theme.controls().label(before, Type.STRONG, FiguresUiWords.get("kept.before"));
            table(found);
        }
        grown.run();
        context.ready();
    }

    private void table(List<KeptSums.Kept> found) {
        Table table = ThemedTable.headed(before, theme, SWT.SINGLE, () -> FiguresUiWords.get("kept.before"));
        for (String column : List.of("kept.at", "kept.by", "kept.about", "kept.entry")) {
            new TableColumn(table, SWT.NONE).setText(FiguresUiWords.get(column));
        }
        found.forEach(each -> new TableItem(table, SWT.NONE).setText(new String[] {
            TIME.format(each.at().atZone(ZoneId.systemDefault())),
            each.by().value(),
            each.what().about().orElse(""),
            each.entry().toString()
        }));
        for (TableColumn column : table.getColumns()) {
            column.pack();
        }
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.heightHint = Math.min(theme.px(160), table.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        table.setLayoutData(data);
        table.addListener(SWT.DefaultSelection, event -> reopen.accept(found.get(table.getSelectionIndex())));
        theme.controls().quiet(before, FiguresUiWords.get("kept.reopen"));
    }
}
