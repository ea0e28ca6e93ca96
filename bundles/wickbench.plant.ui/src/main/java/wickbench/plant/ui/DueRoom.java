package wickbench.plant.ui;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.authority.Act;
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
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** What is due: one key fills a run on the bench with its samples. */
final class DueRoom implements Room {
    private static final int DAYS = 28;

    private final PageContext context;
    private final PlantDoors doors;
    private final Composite room;
    private volatile List<DueItem> items = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private boolean all;

    private record Known(PlantState plant, List<DueItem> items, SiteTimes times, java.time.Instant now) {}

    private record Open(TableKit<DueItem> table, Scroller side, SiteTimes times, Button run, Button excuse) {}

    DueRoom(Composite parent, PageContext context, PlantDoors doors) {
        this.context = context;
        this.doors = doors;
        room = context.theme().controls().box(parent, 1);
        new PageKeys(room, Map.of(SWT.F4, this::run));
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        context.jobs().run(PlantUiWords.get("due.reading"), progress -> known(), this::take);
    }

    private Known known() {
        var now = doors.book().now();
        return new Known(
                doors.book().at(now),
                doors.book().due(now),
                new SiteTimes(doors.book().zone()),
                now);
    }

    private void take(Known known) {
        items = known.items().stream()
                .filter(item -> item.state().open() || all && recent(item, known))
                .sorted(Comparator.comparing(DueItem::state).thenComparing(DueItem::by))
                .toList();
        if (open.isEmpty()) {
            clear();
            if (known.plant().lines().isEmpty()) {
                Nothing.yet(room, context, "empty");
                context.ready();
            } else {
                fill(known);
            }
        } else {
            open.get().table().reload();
        }
        room.layout(true, true);
    }

    private static boolean recent(DueItem item, Known known) {
        return item.since().isAfter(known.now().minus(java.time.Duration.ofDays(DAYS)));
    }

    private void clear() {
        for (Control child : room.getChildren()) {
            child.dispose();
        }
    }

    private void fill(Known known) {
        Controls controls = context.theme().controls();
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<DueItem> table = new TableKit<>(sash, context, new DueTable(known.times()).of(() -> items));
        Scroller side = new Scroller(sash, context.theme());
        sash.setWeights(68, 32);
        Composite bar = controls.row(room);
        Button run = controls.mainButton(bar, PlantUiWords.get("due.run"), this::run);
        Button excuse = controls.button(bar, PlantUiWords.get("due.excuse"), this::excuse);
        Button done = controls.check(bar, PlantUiWords.get("due.all", DAYS));
        done.addListener(SWT.Selection, event -> {
            all = done.getSelection();
            reload();
        });
        open = Optional.of(new Open(table, side, known.times(), run, excuse));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        table.onOpen(item -> run());
        table.onLoaded(this::loaded);
    }

    private void loaded() {
        Open now = open.orElseThrow();
        Optional<DueItem> again = now.table().rows().stream()
                .filter(item -> chosen.filter(item.key()::equals).isPresent())
                .findFirst()
                .or(() -> now.table().rows().stream()
                        .filter(item -> item.state().runnable())
                        .findFirst())
                .or(() -> now.table().rows().stream().findFirst());
        again.ifPresentOrElse(
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
        empty(now.side());
    }

    private static void empty(Scroller side) {
        for (Control child : side.content().getChildren()) {
            child.dispose();
        }
        side.measure();
    }

    private void choose(DueItem item) {
        chosen = Optional.of(item.key());
        Open now = open.orElseThrow();
        now.run().setEnabled(item.state().runnable() && context.has("bench"));
        now.excuse().setEnabled(item.state() == DueState.MISSED || item.state() == DueState.OVERDUE);
        empty(now.side());
        card(now.side().content(), item, now.times());
        now.side().measure();
    }

    private void card(Composite content, DueItem item, SiteTimes times) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        controls.text(card, Type.STRONG, DueTable.about(item));
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
