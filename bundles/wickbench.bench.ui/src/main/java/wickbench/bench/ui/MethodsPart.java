package wickbench.bench.ui;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.profile.SiteFacts;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The open page: the site's methods at the left, the bench card of one at the right. */
final class MethodsPart implements PagePart {
    private final PageContext context;
    private final Methods methods;
    private final Composite page;
    private Optional<TableKit<IssuedMethod>> table = Optional.empty();
    private Optional<Scroller> side = Optional.empty();
    private Optional<String> wanted = Optional.empty();
    private ZoneId zone = ZoneId.of("UTC");

    private record Known(List<IssuedMethod> methods, ZoneId zone) {}

    MethodsPart(Composite parent, PageContext context, Methods methods, SiteFacts site) {
        this.context = context;
        this.methods = methods;
        page = context.theme().controls().box(parent, 1);
        new Heading(page, context.theme(), BenchUiWords.get("methods.heading"), BenchUiWords.get("methods.line"));
        context.jobs()
                .run(
                        BenchUiWords.get("methods.reading"),
                        progress -> new Known(methods.all(), site.now().zone()),
                        this::take);
    }

    private void take(Known known) {
        zone = known.zone();
        if (known.methods().isEmpty()) {
            Fit.grow(new EmptyState(
                    page,
                    context.theme(),
                    pen -> pen.box(5, 3, 14, 18, 2)
                            .line(8, 8, 16, 8)
                            .line(8, 12, 16, 12)
                            .line(8, 16, 13, 16),
                    BenchUiWords.get("methods.empty.title"),
                    BenchUiWords.get("methods.empty.text")));
            context.ready();
        } else {
            fill(known.methods());
        }
        page.layout(true, true);
    }

    private void fill(List<IssuedMethod> all) {
        SashForm sash = Fit.grow(new SashForm(page, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<IssuedMethod> kit = new TableKit<>(sash, context, MethodTable.of(all));
        Scroller card = new Scroller(sash, context.theme());
        sash.setWeights(42, 58);
        table = Optional.of(kit);
        side = Optional.of(card);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> selectFirst(kit));
    }

    private void selectFirst(TableKit<IssuedMethod> kit) {
        Optional<IssuedMethod> asked = wanted.flatMap(
                id -> kit.rows().stream().filter(row -> id(row).equals(id)).findFirst());
        if (kit.selected().isEmpty()) {
            asked.or(() -> kit.rows().stream().findFirst()).ifPresent(kit::select);
        }
    }

    private static String id(IssuedMethod row) {
        return row.method().ref().id().value();
    }

    private void choose(IssuedMethod row) {
        MethodId id = row.method().ref().id();
        context.jobs()
                .run(
                        BenchUiWords.get("methods.reading"),
                        progress -> methods.versions(id),
                        versions -> card(row, versions));
    }

    private void card(IssuedMethod row, List<IssuedMethod> versions) {
        Scroller scroller = side.orElseThrow();
        for (Control old : scroller.content().getChildren()) {
            old.dispose();
        }
        new MethodCard(scroller.content(), context.theme(), zone).fill(row, versions);
        scroller.measure();
        context.ready();
    }

    /** Shows the method with this id. */
    @Override
    public void show(String argument) {
        wanted = Optional.of(argument);
        table.ifPresent(kit -> kit.rows().stream()
                .filter(row -> id(row).equals(argument))
                .findFirst()
                .ifPresent(kit::select));
    }

    @Override
    public void shown() {
        table.ifPresent(TableKit::focus);
    }

    Optional<TableKit<IssuedMethod>> table() {
        return table;
    }

    Optional<Scroller> side() {
        return side;
    }
}
