package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.authority.Act;
import wickbench.plant.PlantState;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.WorstCase;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.PlantTerms;
import wickbench.plant.terms.ProductWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** Cleans, and whether each was shown to work: worst case, three passes in a row, visual first. */
final class CleansRoom implements Room {
    private static final int YEAR = 1;

    private final PageContext context;
    private final PlantDoors doors;
    private final Composite room;
    private volatile List<Validation> cleans = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private Optional<Known> known = Optional.empty();

    private record Open(TableKit<Validation> table, Scroller side, Button confirm) {}

    private record Known(PlantState plant, SiteTimes times, java.time.Instant now) {}

    CleansRoom(Composite parent, PageContext context, PlantDoors doors) {
        this.context = context;
        this.doors = doors;
        room = context.theme().controls().box(parent, 1);
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        context.jobs()
                .run(
                        PlantUiWords.get("cleans.reading"),
                        progress -> {
                            var now = doors.book().now();
                            return new Known(
                                    doors.book().at(now),
                                    new SiteTimes(doors.book().zone()),
                                    now);
                        },
                        this::take);
    }

    private void take(Known now) {
        known = Optional.of(now);
        cleans = now.plant().cleans();
        if (open.isEmpty()) {
            for (Control child : room.getChildren()) {
                child.dispose();
            }
            if (cleans.isEmpty()) {
                Nothing.yet(room, context, "empty");
                context.ready();
            } else {
                fill();
            }
        } else {
            open.get().table().reload();
        }
        room.layout(true, true);
    }

    private void fill() {
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<Validation> table = new TableKit<>(sash, context, new CleanTable().of(() -> cleans));
        Scroller side = new Scroller(sash, context.theme());
        sash.setWeights(60, 40);
        Composite bar = context.theme().controls().row(room);
        Button confirm = context.theme().controls().mainButton(bar, PlantUiWords.get("cleans.confirm"), this::confirm);
        open = Optional.of(new Open(table, side, confirm));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        table.onLoaded(() -> {
            table.rows().stream()
                    .filter(row -> chosen.filter(row.clean().id()::equals).isPresent())
                    .findFirst()
                    .or(() -> table.rows().stream().findFirst())
                    .ifPresent(row -> {
                        table.select(row);
                        choose(row);
                    });
            context.ready();
        });
    }

    private void choose(Validation row) {
        chosen = Optional.of(row.clean().id());
        Open now = open.orElseThrow();
        now.confirm().setEnabled(row.ready());
        for (Control child : now.side().content().getChildren()) {
            child.dispose();
        }
        card(now.side().content(), row);
        worst(now.side().content(), row);
        now.side().measure();
    }

    private void card(Composite content, Validation row) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        controls.text(
                card,
                Type.STRONG,
                PlantUiWords.get("cleans.title", row.clean().id(), row.clean().name()));
        Mark mark = CleanTable.mark(row);
        Fit.wide(new MarkedLine(card, context.theme(), new Mark("", mark.shape(), mark.meaning()), mark.word()));
        Facts facts = new Facts(card, context.theme())
                .add(PlantUiWords.get("column.line"), row.clean().line())
                .add(
                        PlantUiWords.get("column.minutes"),
                        Integer.toString(row.clean().minutes()))
                .add(
                        PlantUiWords.get("column.edition"),
                        Integer.toString(row.clean().edition()))
                .add(PlantUiWords.get("column.passes"), PlantUiWords.get("cleans.passes", row.passes(), Series.PASSES));
        row.until().ifPresent(day -> facts.add(PlantUiWords.get("column.until"), day.toString()));
        if (!row.allergens().isEmpty()) {
            facts.add(PlantUiWords.get("column.for"), ChangeWords.names(row.allergens()));
        }
        row.series().ifPresent(series -> facts.add(PlantUiWords.get("column.worst"), series.product()));
        row.why().ifPresent(why -> Fit.wide(new Note(card, context.theme(), Meaning.CAUTION, why)));
        row.runs()
                .forEach(ran -> Fit.wide(new MarkedLine(
                        card,
                        context.theme(),
                        ran.passed()
                                ? new Mark("", Shape.RING, Meaning.CALM)
                                : new Mark("", Shape.CROSS, Meaning.ALARM),
                        ran(ran))));
    }

    private String ran(Validation.Ran ran) {
        String when = known.orElseThrow().times().minute(ran.run().at());
        return ran.passed()
                ? PlantUiWords.get("cleans.ran", when)
                : PlantUiWords.get(
                        "cleans.failed",
                        when,
                        ran.lacks().stream()
                                .map(lack ->
                                        PlantUiWords.get("lack." + lack.why().code(), lack.place()))
                                .reduce((one, other) -> one + ", " + other)
                                .orElse(""));
    }

    private void worst(Composite content, Validation row) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        controls.text(card, Type.STRONG, PlantUiWords.get("cleans.worst"));
        WorstCase.rank(
                        known.orElseThrow().plant().productsOf(row.clean().line()),
                        row.clean().removes())
                .forEach(each -> controls.text(
                        card,
                        Type.BODY,
                        PlantUiWords.get("cleans.because", each.product().name(), ProductWords.reasons(each))));
        controls.text(card, Type.SMALL, PlantTerms.said("worst.practice"));
    }

    private void confirm() {
        chosen.ifPresent(id -> Acting.sign(
                context,
                doors,
                room.getShell(),
                new Acting.Signing(Act.VALIDATE_CLEAN, "confirm", id),
                (by, reason) -> doors.keeping()
                        .confirm(
                                new Confirmed(
                                        id,
                                        known.orElseThrow()
                                                .times()
                                                .day(known.orElseThrow().now())
                                                .plusYears(YEAR),
                                        reason),
                                by),
                this::reload));
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }
}
