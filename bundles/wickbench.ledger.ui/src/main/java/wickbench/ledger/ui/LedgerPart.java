package wickbench.ledger.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The open page: filters and results at the left, one result in full at the right. */
final class LedgerPart implements PagePart {
    /** Asks for what nobody has reviewed. */
    static final String UNREVIEWED = "unreviewed";

    private final PageContext context;
    private final Ledger ledger;
    private final ActDoors doors;
    private final Composite page;
    private final Composite body;
    private Optional<OpenLedger> open = Optional.empty();
    private Optional<String> wanted = Optional.empty();
    private boolean loading;
    private boolean onlyUnreviewed;

    LedgerPart(Composite parent, PageContext context, Ledger ledger, ActDoors doors) {
        this.context = context;
        this.doors = doors;
        this.ledger = ledger;
        page = context.theme().controls().box(parent, 1);
        Heading heading = new Heading(
                page, context.theme(), LedgerUiWords.get("ledger.heading"), LedgerUiWords.get("ledger.line"));
        ((GridLayout) heading.actions().getLayout()).numColumns = 4;
        new PaperButtons(
                        context,
                        ledger.packing(),
                        () -> open.ifPresent(OpenLedger::print),
                        () -> open.map(OpenLedger::filter).orElse(Filter.ALL))
                .into(heading.actions());
        new ResultButtons(
                        context,
                        doors,
                        new ActSheets(context, doors, parent.getShell()),
                        () -> open.map(OpenLedger::chosen).orElse(List.of()),
                        () -> open.orElseThrow().known().people(),
                        this::newsCame)
                .into(heading.actions());
        body = Fit.grow(context.theme().controls().box(page, 1));
        load();
    }

    private void load() {
        loading = true;
        context.jobs().run(LedgerUiWords.get("ledger.reading"), progress -> ledger.known(), this::take);
    }

    private void take(Ledger.Known known) {
        loading = false;
        clear(body);
        if (known.any() == 0) {
            nothingYet();
        } else {
            fill(known);
        }
        page.layout(true, true);
    }

    private void nothingYet() {
        EmptyState empty = Fit.grow(new EmptyState(
                body,
                context.theme(),
                pen -> pen.box(4, 3, 16, 18, 2).line(8, 3, 8, 21),
                LedgerUiWords.get("ledger.empty.title"),
                LedgerUiWords.get("ledger.empty.text")));
        if (context.has("bench")) {
            empty.offer(LedgerUiWords.get("ledger.empty.verb"), () -> context.show("bench"));
        }
        context.ready();
    }

    private void fill(Ledger.Known known) {
        SiteTimes times = new SiteTimes(known.site().zone());
        FilterBar filters = new FilterBar(body, context.theme(), known.site().outcomeOrder(), this::reload);
        WeekFold weeks = new WeekFold(body, filters.row(), context, ledger, filters::filter);
        SashForm sash = Fit.grow(new SashForm(body, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<ResultRow> table = new TableKit<>(
                sash,
                context,
                new ResultTable(times, known.people()).of(new ResultSource(ledger.results(), filters::filter)));
        ResultSide side = new ResultSide(sash, context, ledger, known, doors, this::isShown, this::reload);
        sash.setWeights(52, 48);
        open = Optional.of(new OpenLedger(filters, weeks, table, side, known));
        table.onSelect(rows ->
                rows.stream().findFirst().ifPresent(row -> side.find(row.id().toString())));
        table.onLoaded(() -> loaded(table));
        wanted.ifPresent(side::find);
        if (onlyUnreviewed) {
            onlyUnreviewed = false;
            filters.onlyUnreviewed(true);
        }
    }

    private void reload() {
        open.ifPresent(OpenLedger::reload);
    }

    /** Shows the first result when none is chosen, so that the side is never blank without a reason. */
    private void loaded(TableKit<ResultRow> table) {
        if (table.rows().isEmpty()) {
            open.ifPresent(now -> now.side().blank());
            context.ready();
        } else if (table.selected().isEmpty() && wanted.isEmpty()) {
            table.select(table.rows().get(0));
        }
    }

    /** A result that was asked for is chosen in the table too. */
    private void isShown(Optional<ResultRow> found) {
        wanted.flatMap(argument -> found)
                .ifPresent(row -> open.orElseThrow().table().select(row));
        wanted = Optional.empty();
    }

    private static void clear(Composite some) {
        for (Control old : some.getChildren()) {
            old.dispose();
        }
    }

    /** Shows the result with this entry id, or at this place in the journal; or what waits for its review. */
    @Override
    public void show(String argument) {
        if (argument.equals(UNREVIEWED)) {
            onlyUnreviewed = open.isEmpty();
            open.ifPresent(now -> now.filters().onlyUnreviewed(true));
            return;
        }
        wanted = Optional.of(argument);
        open.ifPresent(now -> now.side().find(argument));
    }

    private boolean asking() {
        return open.filter(now -> now.side().asking()).isPresent();
    }

    /** Reads anew, for strips may have been recorded meanwhile. */
    @Override
    public void shown() {
        if (loading || asking()) {
            return;
        }
        open.ifPresentOrElse(
                now -> {
                    now.table().reload();
                    focus();
                },
                this::load);
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }

    /** Keeps what is chosen in front. */
    @Override
    public void newsCame() {
        if (loading || asking()) {
            return;
        }
        open.ifPresentOrElse(
                now -> {
                    now.table().selected().stream()
                            .findFirst()
                            .ifPresent(row -> show(row.id().toString()));
                    now.table().reload();
                },
                this::load);
    }

    Optional<TableKit<ResultRow>> table() {
        return open.map(OpenLedger::table);
    }

    Optional<FilterBar> filters() {
        return open.map(OpenLedger::filters);
    }

    Optional<WeekFold> weeks() {
        return open.map(OpenLedger::weeks);
    }

    Optional<Scroller> side() {
        return open.map(now -> now.side().scroller());
    }
}
