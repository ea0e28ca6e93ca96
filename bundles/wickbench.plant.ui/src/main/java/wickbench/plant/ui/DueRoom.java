package wickbench.plant.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueState;
import wickbench.plant.terms.PlantTerms;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Shape;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** What is due: one key fills a run on the bench with its samples. */
final class DueRoom extends PlantRoom<DueRoom.Now> {
    private static final int DAYS = 28;

    private volatile List<DueItem> items = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private boolean all;

    record Now(PlantState plant, PlantDoors.May may, List<DueItem> items, SiteTimes times, Instant at)
            implements Known {}

    private record Open(TableKit<DueItem> table, Side side, Button run, Button excuse) {}

    DueRoom(Composite parent, PageContext context, PlantDoors doors) {
        super(parent, context, doors, "due.reading");
        new PageKeys(room, Map.of(SWT.F4, this::run));
        reload();
    }

    @Override
    Now read(Optional<PersonId> actor) {
        Instant at = doors.book().now();
        return new Now(
                doors.book().at(at),
                doors.may(actor, Act.KEEP_PLANT),
                doors.book().due(at),
                new SiteTimes(doors.book().zone()),
                at);
    }

    @Override
    void take(Now now) {
        items = now.items().stream()
                .filter(item -> item.state().open() || all && recent(item, now))
                .sorted(Comparator.comparing(DueItem::state).thenComparing(DueItem::by))
                .toList();
        open.orElseThrow().table().reload();
    }

    private static boolean recent(DueItem item, Now now) {
        return item.since().isAfter(now.at().minus(Duration.ofDays(DAYS)));
    }

    @Override
    void fill(Now now) {
        SashForm sash = halves();
        TableKit<DueItem> table = new TableKit<>(sash, context, new DueTable(now.times()).of(() -> items));
        Side side = new Side(sash, context.theme());
        sash.setWeights(64, 36);
        Composite bar = context.theme().controls().row(room);
        Button run = context.theme().controls().mainButton(bar, PlantUiWords.get("due.run"), this::run);
        Button excuse = context.theme().controls().button(bar, PlantUiWords.get("due.excuse"), this::excuse);
        more(bar, side);
        open = Optional.of(new Open(table, side, run, excuse));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        table.onOpen(item -> run());
        table.onLoaded(this::loaded);
    }

    private void more(Composite bar, Side side) {
        Controls controls = context.theme().controls();
        controls.button(
                bar,
                PlantUiWords.get("change.open"),
                () -> ask(side, stand -> ChangeForm.open(stand, Optional.empty()), this::loaded));
        controls.button(bar, PlantUiWords.get("rules.open"), () -> rules(side));
        Button done = controls.check(bar, PlantUiWords.get("due.all", DAYS));
        done.addListener(SWT.Selection, event -> {
            all = done.getSelection();
            reload();
        });
    }

    private void rules(Side side) {
        ask(
                side,
                stand -> side.fill(content -> new RulesCard(
                                context,
                                (line, rule) -> ask(side, form -> RuleForm.open(form, line, rule), () -> rules(side)))
                        .fill(content, stand.plant())),
                this::loaded);
    }

    private void loaded() {
        Open now = open.orElseThrow();
        if (asking()) {
            context.ready();
            return;
        }
        List<DueItem> rows = now.table().rows();
        rows.stream()
                .filter(item -> chosen.filter(item.key()::equals).isPresent())
                .findFirst()
                .or(() -> rows.stream().filter(item -> item.state().runnable()).findFirst())
                .or(() -> rows.stream().findFirst())
                .ifPresentOrElse(
                        item -> {
                            now.table().select(item);
                            choose(item);
                        },
                        this::none);
        context.ready();
    }

    private void none() {
        Open now = open.orElseThrow();
        now.run().setEnabled(false);
        now.excuse().setEnabled(false);
        now.side().clear();
    }

    private void choose(DueItem item) {
        shown();
        chosen = Optional.of(item.key());
        Open now = open.orElseThrow();
        now.run().setEnabled(item.state().runnable() && context.has("bench"));
        now.excuse().setEnabled(item.state() == DueState.MISSED || item.state() == DueState.OVERDUE);
        now.side().fill(content -> card(content, item, known().orElseThrow().times()));
    }

    private void card(Composite content, DueItem item, SiteTimes times) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        controls.text(
                card, Type.STRONG, PlantUiWords.get("due.headline", item.rule().line(), DueTable.about(item)));
        Mark mark = DueTable.mark(item.state());
        Fit.wide(new MarkedLine(
                card,
                context.theme(),
                new Mark("", mark.shape(), mark.meaning()),
                PlantUiWords.get("due.says." + item.state().code(), mark.word())));
        new Facts(card, context.theme())
                .add(PlantUiWords.get("column.rule"), item.rule().id())
                .add(
                        PlantUiWords.get("column.when"),
                        PlantTerms.said("when." + item.rule().when().code()))
                .add(PlantUiWords.get("column.since"), times.minute(item.since()))
                .add(PlantUiWords.get("column.by"), times.minute(item.by()));
        item.samples().forEach(sample -> {
            boolean done = sample.done().isPresent();
            Fit.wide(new MarkedLine(
                    card,
                    context.theme(),
                    done ? new Mark("", Shape.RING, Meaning.CALM) : new Mark("", Shape.DIAMOND, Meaning.NOTICE),
                    PlantUiWords.get(
                            done ? "due.sampled" : "due.to-sample",
                            sample.what().place(),
                            sample.what().method())));
        });
    }

    /** The one that was chosen, also while the table reads its rows anew. */
    private Optional<DueItem> selected() {
        return items.stream()
                .filter(item -> chosen.filter(item.key()::equals).isPresent())
                .findFirst();
    }

    /** Goes to the bench, where a run is filled in with what is still to be sampled. */
    private void run() {
        selected().ifPresent(item -> {
            if (!item.state().runnable()) {
                context.say(PlantUiWords.get("due.not-runnable"));
            } else if (context.has("bench")) {
                context.show("bench", "due:" + item.key());
            } else {
                context.say(PlantUiWords.get("due.no-bench"));
            }
        });
    }

    private void excuse() {
        selected()
                .ifPresent(item -> Acting.sign(
                        context,
                        doors,
                        room.getShell(),
                        new Acting.Signing(Act.EXCUSE_DUE, "excuse", DueTable.about(item)),
                        (by, reason) -> doors.keeping().excuse(item.rule().id(), item.since(), reason, by),
                        this::reload));
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }
}
