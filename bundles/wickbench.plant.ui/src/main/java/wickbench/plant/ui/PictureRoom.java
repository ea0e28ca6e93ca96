package wickbench.plant.ui;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.PointLook;
import wickbench.plant.site.FloorPicture;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Mark;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** The floor picture: points by their latest outcome as of a day, and from each to its results. */
final class PictureRoom extends PlantRoom<PictureRoom.Now> {
    private volatile List<PointLook> looks = List.of();
    private volatile Optional<LocalDate> day = Optional.empty();
    private volatile Optional<FloorPicture> shown = Optional.empty();
    private Optional<Open> open = Optional.empty();
    private Optional<String> placing = Optional.empty();

    private record Open(FloorCanvas floor, TableKit<PointLook> table, DaySlider slider, PointSide side) {}

    record Now(
            PlantState plant,
            PlantDoors.May may,
            Optional<ImageData> image,
            List<PointLook> looks,
            List<MethodId> methods,
            SiteTimes times,
            LocalDate today)
            implements Known {}

    PictureRoom(Composite parent, PageContext context, PlantDoors doors) {
        super(parent, context, doors, "picture.reading");
        reload();
    }

    @Override
    Now read(Optional<PersonId> actor) {
        SiteTimes times = new SiteTimes(doors.book().zone());
        Instant now = doors.book().now();
        LocalDate today = times.day(now);
        PlantState plant = doors.book().at(now);
        Optional<ImageData> image = plant.picture().equals(shown)
                ? Optional.empty()
                : plant.picture().flatMap(each -> FloorImage.of(each, doors));
        List<PointLook> at = doors.book().looks(times.endOf(day.orElse(today)));
        return new Now(
                plant, doors.may(actor, Act.KEEP_PLANT), image, at, doors.book().methods(now), times, today);
    }

    @Override
    void fill(Now now) {
        Controls controls = context.theme().controls();
        SashForm sash = halves();
        FloorCanvas floor = new FloorCanvas(sash, context.theme(), this::select, this::put);
        Composite right = controls.box(sash, 1);
        TableKit<PointLook> table = new TableKit<>(right, context, new PointTable(now.times()).of(() -> looks));
        PointSide side = new PointSide(right, context.theme(), table.control());
        sash.setWeights(60, 40);
        DaySlider slider = new DaySlider(room, context, now.today(), this::go);
        Composite legend = controls.row(room);
        // wider than what parts a shape from its own word
        ((RowLayout) legend.getLayout()).spacing = context.theme().metrics().grid(2);
        PointMarks.all().forEach(mark -> legend(legend, mark));
        Composite bar = controls.row(room);
        controls.mainButton(bar, PlantUiWords.get("picture.results"), this::results);
        controls.button(bar, PlantUiWords.get("point.new.open"), () -> form(Optional.empty()));
        controls.button(bar, PlantUiWords.get("point.change.open"), () -> form(selected()));
        controls.button(bar, PlantUiWords.get("picture.place"), this::place);
        controls.button(bar, PlantUiWords.get("picture.import"), this::choose);
        open = Optional.of(new Open(floor, table, slider, side));
        table.onSelect(rows -> rows.stream()
                .findFirst()
                .ifPresent(look -> floor.choose(look.point().name())));
        table.onOpen(look -> results());
        table.onLoaded(this::loaded);
    }

    @Override
    void take(Now now) {
        looks = now.looks();
        Open made = open.orElseThrow();
        now.image().ifPresent(made.floor()::picture);
        made.slider().today(now.today());
        made.floor().show(looks);
        made.table().reload();
        shown = now.plant().picture();
    }

    private void go(LocalDate to) {
        day = Optional.of(to);
        reload();
    }

    /** A point that was just stated is chosen, and waits to be placed. */
    private void loaded() {
        placing.flatMap(point -> looks.stream()
                        .filter(look -> look.point().name().equals(point))
                        .findFirst())
                .ifPresent(look -> {
                    placing = Optional.empty();
                    select(look);
                    if (shown.isPresent() && look.spot().isEmpty()) {
                        place();
                    }
                });
        context.ready();
    }

    private void form(Optional<PointLook> before) {
        Open now = open.orElseThrow();
        now.side().form(true);
        ask(
                now.side().side(),
                stand -> PointForm.open(
                        stand,
                        before.map(PointLook::point),
                        known().orElseThrow().methods(),
                        name -> {
                            placing = Optional.of(name);
                            now.side().form(false);
                            stand.done().accept(PlantUiWords.get("point.done", name));
                        }),
                () -> now.side().form(false));
    }

    private void legend(Composite parent, Mark mark) {
        Composite one = context.theme().controls().box(parent, 2);
        // the image has its own room at the right
        ((GridLayout) one.getLayout()).horizontalSpacing = 0;
        context.theme()
                .controls()
                .label(one, Type.SMALL, "")
                .setImage(context.theme().image(mark.shape(), mark.meaning()));
        context.theme().controls().label(one, Type.SMALL, mark.word());
    }

    private void select(PointLook look) {
        open.ifPresent(now -> {
            now.table().rows().stream()
                    .filter(row -> row.point().name().equals(look.point().name()))
                    .findFirst()
                    .ifPresent(now.table()::select);
            now.floor().choose(look.point().name());
        });
    }

    private Optional<PointLook> selected() {
        return open.flatMap(now -> now.table().selected().stream().findFirst());
    }

    /** Goes to the result by which the chosen point is marked. */
    private void results() {
        Optional<PointLook> look = selected();
        if (look.isEmpty()) {
            context.say(PlantUiWords.get("picture.choose"));
        } else if (look.get().latest().isEmpty()) {
            context.say(PlantUiWords.get("picture.untested", look.get().point().name()));
        } else if (context.has("ledger")) {
            context.show("ledger", look.get().latest().get().result().toString());
        } else {
            context.say(PlantUiWords.get("picture.no-ledger"));
        }
    }

    private void place() {
        if (shown.isEmpty()) {
            context.say(PlantUiWords.get("picture.missing"));
            return;
        }
        selected()
                .ifPresentOrElse(
                        look -> {
                            open.orElseThrow().floor().place(look.point().name());
                            context.say(PlantUiWords.get(
                                    "picture.placing", look.point().name()));
                        },
                        () -> context.say(PlantUiWords.get("picture.choose")));
    }

    private void put(double x, double y) {
        FloorPicture picture = shown.orElseThrow();
        selected()
                .ifPresent(look -> Acting.run(
                        context,
                        doors,
                        Act.KEEP_PLANT,
                        "picture.placing-now",
                        by -> doors.keeping()
                                .place(
                                        look.point().name(),
                                        BigDecimal.valueOf(Math.floor(x * picture.width())),
                                        BigDecimal.valueOf(Math.floor(y * picture.height())),
                                        Actor.of(by)),
                        spot -> {
                            context.say(PlantUiWords.get("picture.placed", spot.point()));
                            reload();
                        }));
    }

    private void choose() {
        context.files()
                .open(PlantUiWords.get("picture.choose-file"), "*.png;*.jpg;*.jpeg", "*")
                .ifPresent(this::read);
    }

    /** Takes a floor picture in. */
    void read(Path file) {
        Acting.run(
                context,
                doors,
                Act.KEEP_PLANT,
                "picture.taking",
                by -> doors.keeping().picture(file, Actor.of(by)),
                picture -> {
                    context.say(PlantUiWords.get("picture.taken", picture.width(), picture.height()));
                    reload();
                });
    }

    /** Shows the points as of a day, such as {@code 2026-03-01}. */
    @Override
    public void show(String day) {
        open.ifPresent(now -> now.slider().go(LocalDate.parse(day)));
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }
}
