package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.shell.PageContext;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.TableKit;

/** The site's methods in a table, with room for one of them beside it; or what to do first where there is none. */
final class MethodList {
    private final PageContext context;
    private final Consumer<IssuedMethod> chosen;
    private Optional<TableKit<IssuedMethod>> table = Optional.empty();

    MethodList(PageContext context, Consumer<IssuedMethod> chosen) {
        this.context = context;
        this.chosen = chosen;
    }

    void fill(Composite body, MethodAside aside, List<IssuedMethod> all, Optional<String> wanted) {
        SashForm sash = Fit.grow(new SashForm(body, SWT.HORIZONTAL));
        sash.setBackground(body.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<IssuedMethod> kit = new TableKit<>(sash, context, MethodTable.of(all));
        aside.in(sash);
        sash.setWeights(46, 54);
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(chosen));
        kit.onLoaded(() -> selectFirst(kit, wanted));
    }

    private static void selectFirst(TableKit<IssuedMethod> kit, Optional<String> wanted) {
        if (kit.selected().isEmpty()) {
            wanted.flatMap(id -> find(kit.rows(), id))
                    .or(() -> kit.rows().stream().findFirst())
                    .ifPresent(kit::select);
        }
    }

    /** Says what to do first. */
    void nothingYet(Composite body, String verb, Runnable write) {
        EmptyState empty = new EmptyState(
                body,
                context.theme(),
                pen -> pen.box(5, 3, 14, 18, 2)
                        .line(8, 8, 16, 8)
                        .line(8, 12, 16, 12)
                        .line(8, 16, 13, 16),
                BenchUiWords.get("methods.empty.title"),
                BenchUiWords.get("methods.empty.text"));
        Fit.grow(empty.offer(verb, write));
    }

    void clear() {
        table = Optional.empty();
    }

    void select(IssuedMethod row) {
        table.ifPresent(kit -> kit.select(row));
    }

    Optional<TableKit<IssuedMethod>> table() {
        return table;
    }

    static Optional<IssuedMethod> find(List<IssuedMethod> all, String id) {
        return all.stream().filter(row -> id(row).equals(id)).findFirst();
    }

    static String id(IssuedMethod row) {
        return row.method().ref().id().value();
    }
}
