package wickbench.ledger.ui;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Names;
import wickbench.widgets.Scroller;
import wickbench.widgets.TableKit;

/** The open page: what is open at the left; at the right one case, or whether a batch or line may go. */
final class ReleasePart implements PagePart {
    private final PageContext context;
    private final ActDoors doors;
    private final ActSheets sheets;
    private final InstantSource clock;
    private final Composite page;
    private final Composite body;
    private final Combo sort;
    private final Text name;
    private Optional<ActDoors.Known> known = Optional.empty();
    private Optional<TableKit<Case>> table = Optional.empty();
    private Optional<Scroller> side = Optional.empty();
    private Optional<UUID> wanted = Optional.empty();
    private Optional<Subject> asked = Optional.empty();

    ReleasePart(Composite parent, PageContext context, ActDoors doors, InstantSource clock) {
        this.context = context;
        this.doors = doors;
        this.clock = clock;
        sheets = new ActSheets(context, doors, parent.getShell());
        page = context.theme().controls().box(parent, 1);
        new Heading(page, context.theme(), LedgerUiWords.get("release.heading"), LedgerUiWords.get("release.line"));
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
        known = Optional.of(now);
        clear(body);
        SashForm sash = Fit.grow(new SashForm(body, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<Case> kit = new TableKit<>(sash, context, new CaseTable(now.times(), clock.instant()).of(now.open()));
        side = Optional.of(new Scroller(sash, context.theme()));
        sash.setWeights(50, 50);
        table = Optional.of(kit);
        kit.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        kit.onLoaded(() -> first(kit));
        page.layout(true, true);
    }

    /** Shows again what was shown before, and the oldest case at first. */
    private void first(TableKit<Case> kit) {
        if (asked.isPresent()) {
            answer(asked.get());
        } else if (wanted.isPresent()) {
            find(wanted.get());
        } else if (kit.rows().isEmpty()) {
            context.ready();
        } else if (kit.selected().isEmpty()) {
            kit.select(kit.rows().get(0));
        }
    }

    private void choose(Case of) {
        asked = Optional.empty();
        wanted = Optional.of(of.result().id());
        show(of);
    }

    private void find(UUID result) {
        context.jobs()
                .run(
                        LedgerUiWords.get("release.reading"),
                        progress -> doors.deciding().of(result),
                        found -> found.ifPresentOrElse(
                                this::show, () -> context.say(LedgerUiWords.get("result.absent"))));
    }

    private void show(Case of) {
        ActDoors.Known now = known.orElseThrow();
        aside(content -> new CaseCard(content, context.theme(), now, clock.instant())
                .fill(
                        of,
                        choice -> sheets.decide(choice, of.result().sample(), now.rights(), now.people(), this::load)));
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
        answer(asked.get());
    }

    private void answer(Subject subject) {
        context.jobs()
                .run(
                        LedgerUiWords.get("release.reading"),
                        progress -> doors.releasing().standing(subject),
                        this::show);
    }

    private void show(Standing standing) {
        ActDoors.Known now = known.orElseThrow();
        Instant instant = clock.instant();
        aside(content -> new StandingCard(content, context.theme(), now, instant)
                .fill(standing, subject -> sheets.release(subject, now.rights(), now.people(), this::load)));
    }

    private void aside(Consumer<Composite> fill) {
        side.ifPresent(scroller -> {
            clear(scroller.content());
            fill.accept(scroller.content());
            scroller.measure();
        });
        context.ready();
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
            known.ifPresent(now -> find(wanted.get()));
        } else {
            boolean line = argument.startsWith("line:");
            sort.select(line ? 1 : 0);
            name.setText(argument.substring(colon + 1));
            ask();
        }
    }

    @Override
    public void shown() {
        table.ifPresent(TableKit::focus);
    }

    @Override
    public void newsCame() {
        load();
    }

    Optional<TableKit<Case>> table() {
        return table;
    }

    Optional<Scroller> side() {
        return side;
    }

    Text name() {
        return name;
    }
}
