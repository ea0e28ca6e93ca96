package wickbench.ledger.ui;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Subject;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Names;
import wickbench.widgets.TableKit;

/** The open page: what is open at the left; at the right one case, or whether a batch or line may go. */
final class ReleasePart implements PagePart {
    private final PageContext context;
    private final ActDoors doors;
    private final InstantSource clock;
    private final Composite page;
    private final Composite body;
    private final Combo sort;
    private final Text name;
    private Optional<TableKit<Case>> table = Optional.empty();
    private Optional<ReleaseSide> side = Optional.empty();
    private Optional<UUID> wanted = Optional.empty();
    private Optional<Subject> asked = Optional.empty();

    ReleasePart(Composite parent, PageContext context, ActDoors doors, InstantSource clock) {
        this.context = context;
        this.doors = doors;
        this.clock = clock;
        page = context.theme().controls().box(parent, 1);
        Heading heading = new Heading(
                page, context.theme(), LedgerUiWords.get("release.heading"), LedgerUiWords.get("release.line"));
        ((GridLayout) heading.actions().getLayout()).numColumns = 2;
        context.theme().controls().button(heading.actions(), LedgerUiWords.get("plan.open"), this::plan);
        context.theme().controls().button(heading.actions(), LedgerUiWords.get("outside.open"), this::outside);
        Composite row = context.theme().controls().box(page, 3);
        sort = context.theme()
                .controls()
                .choice(row, List.of(LedgerUiWords.get("release.batch"), LedgerUiWords.get("release.of-line")));
        sort.select(0);
        Names.give(sort, () -> LedgerUiWords.get("release.sort"));
        name = context.theme().controls().field(row);
        name.setMessage(LedgerUiWords.get("release.name"));
        Fit.width(name, context.theme().px(200));
        Names.give(name, () -> LedgerUiWords.get("release.name"));
        name.addListener(SWT.DefaultSelection, event -> ask());
        context.theme().controls().button(row, LedgerUiWords.get("release.ask"), this::ask);
        body = Fit.grow(context.theme().controls().box(page, 1));
        context.onActor(actor -> load());
        load();
    }

    private void load() {
        var actor = context.actor();
        context.jobs().run(LedgerUiWords.get("release.reading"), progress -> doors.known(actor), this::take);
    }

    private void take(ActDoors.Known now) {
        clear(body);
        SashForm sash = Fit.grow(new SashForm(body, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<Case> kit = new TableKit<>(sash, context, new CaseTable(now.times(), clock.instant()).of(now.open()));
        side = Optional.of(new ReleaseSide(sash, context, doors, now, clock, this::load));
        sash.setWeights(50, 50);
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> first(kit));
        page.layout(true, true);
    }

    /** Shows again what was shown before, and the oldest case at first. */
    private void first(TableKit<Case> kit) {
        if (asked.isPresent()) {
            aside().answer(asked.get());
        } else if (wanted.isPresent()) {
            aside().find(wanted.get());
        } else if (kit.rows().isEmpty()) {
            context.ready();
        } else if (kit.selected().isEmpty()) {
            kit.select(kit.rows().get(0));
        }
    }

    private void choose(Case of) {
        asked = Optional.empty();
        wanted = Optional.of(of.result().id());
        aside().show(of);
    }

    private ReleaseSide aside() {
        return side.orElseThrow();
    }

    private void plan() {
        side.ifPresent(ReleaseSide::plan);
    }

    private void outside() {
        side.ifPresent(ReleaseSide::outside);
    }

    private void ask() {
        String typed = name.getText().strip();
        if (typed.isEmpty()) {
            context.say(LedgerUiWords.get("release.name-first"));
            name.setFocus();
            return;
        }
        wanted = Optional.empty();
        asked = Optional.of(sort.getSelectionIndex() == 1 ? Subject.line(typed) : Subject.batch(typed));
        side.ifPresent(now -> now.answer(asked.get()));
    }

    private static void clear(Composite some) {
        for (Control old : some.getChildren()) {
            old.dispose();
        }
    }

    /** Shows the case of a result by its id, or a batch as {@code batch:NAME}, or a line as {@code line:NAME}. */
    @Override
    public void show(String argument) {
        int colon = argument.indexOf(':');
        if (colon < 0) {
            asked = Optional.empty();
            wanted = Optional.of(UUID.fromString(argument));
            side.ifPresent(now -> now.find(wanted.get()));
        } else {
            boolean line = argument.startsWith("line:");
            sort.select(line ? 1 : 0);
            name.setText(argument.substring(colon + 1));
            ask();
        }
    }

    @Override
    public void focus() {
        table.ifPresent(TableKit::focus);
    }

    @Override
    public void newsCame() {
        if (side.filter(ReleaseSide::asking).isEmpty()) {
            load();
        }
    }

    Optional<TableKit<Case>> table() {
        return table;
    }

    Optional<ReleaseSide> side() {
        return side;
    }

    Text name() {
        return name;
    }
}
