package wickbench.plant.ui;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.WorstCase;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.CleanWords;
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
import wickbench.widgets.Shape;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** Cleans, and whether each was shown to work: worst case, three passes in a row, visual first. */
final class CleansRoom extends PlantRoom<CleansRoom.Now> {
    private static final int YEAR = 1;

    private volatile List<Validation> cleans = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();

    private record Open(TableKit<Validation> table, Side side, Button confirm) {}

    record Now(PlantState plant, PlantDoors.May may, SiteTimes times, Instant at) implements Known {}

    CleansRoom(Composite parent, PageContext context, PlantDoors doors) {
        super(parent, context, doors, "cleans.reading");
        reload();
    }

    @Override
    Now read(Optional<PersonId> actor) {
        Instant at = doors.book().now();
        SiteTimes times = new SiteTimes(doors.book().zone());
        return new Now(doors.book().at(at), doors.may(actor, Act.KEEP_PLANT), times, at);
    }

    @Override
    void fill(Now now) {
        cleans = now.plant().cleans();
        SashForm sash = halves();
        TableKit<Validation> table = new TableKit<>(sash, context, new CleanTable().of(() -> cleans));
        Side side = new Side(sash, context.theme());
        sash.setWeights(60, 40);
        Composite bar = context.theme().controls().row(room);
        Button confirm = context.theme().controls().mainButton(bar, PlantUiWords.get("cleans.confirm"), this::confirm);
        context.theme().controls().button(bar, PlantUiWords.get("series.open"), this::series);
        open = Optional.of(new Open(table, side, confirm));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        table.onLoaded(this::loaded);
    }

    @Override
    void take(Now now) {
        cleans = now.plant().cleans();
        open.orElseThrow().table().reload();
    }

    private Optional<Validation> selected() {
        return cleans.stream()
                .filter(row -> chosen.filter(row.clean().id()::equals).isPresent())
                .findFirst();
    }

    private void loaded() {
        if (!asking()) {
            selected().or(() -> cleans.stream().findFirst()).ifPresent(row -> {
                open.orElseThrow().table().select(row);
                choose(row);
            });
        }
        context.ready();
    }

    private void choose(Validation row) {
        shown();
        chosen = Optional.of(row.clean().id());
        Open now = open.orElseThrow();
        now.confirm().setEnabled(row.ready());
        now.side().fill(content -> {
            card(content, row);
            worst(content, row);
        });
    }

    private void series() {
        selected()
                .ifPresentOrElse(
                        row -> ask(open.orElseThrow().side(), stand -> SeriesForm.open(stand, row), this::loaded),
                        () -> context.say(PlantUiWords.get("cleans.choose")));
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
                .add(PlantUiWords.get("column.passes"), CleanWords.passes(row));
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
        String when = known().orElseThrow().times().minute(ran.run().at());
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
                        known().orElseThrow().plant().productsOf(row.clean().line()),
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
                                        known().orElseThrow()
                                                .times()
                                                .day(known().orElseThrow().at())
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
