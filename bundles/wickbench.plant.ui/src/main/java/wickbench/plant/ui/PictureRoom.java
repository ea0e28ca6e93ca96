package wickbench.plant.ui;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import wickbench.api.authority.Act;
import wickbench.plant.PlantKeeping.Actor;
import wickbench.plant.PointLook;
import wickbench.plant.site.FloorPicture;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** The floor picture: points by their latest outcome as of a day, and from each to its results. */
final class PictureRoom implements Room {
    private final PageContext context;
    private final PlantDoors doors;
    private final Composite room;
    private volatile List<PointLook> looks = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<FloorPicture> shown = Optional.empty();

    private record Open(FloorCanvas floor, TableKit<PointLook> table, DaySlider slider, Button place) {}

    private record Known(
            Optional<FloorPicture> picture,
            Optional<ImageData> image,
            List<PointLook> looks,
            SiteTimes times,
            LocalDate today) {}

    PictureRoom(Composite parent, PageContext context, PlantDoors doors) {
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
        Optional<LocalDate> day = open.map(now -> now.slider().day());
        Optional<FloorPicture> before = shown;
        context.jobs().run(PlantUiWords.get("picture.reading"), progress -> known(day, before), this::take);
    }

    private Known known(Optional<LocalDate> day, Optional<FloorPicture> before) {
        SiteTimes times = new SiteTimes(doors.book().zone());
        LocalDate today = times.day(doors.book().now());
        Optional<FloorPicture> picture = doors.book().at(doors.book().now()).picture();
        Optional<ImageData> image =
                picture.equals(before) ? Optional.empty() : picture.flatMap(each -> FloorImage.of(each, doors));
        return new Known(picture, image, doors.book().looks(times.endOf(day.orElse(today))), times, today);
    }

    private void take(Known known) {
        looks = known.looks();
        if (open.isEmpty()) {
            for (Control child : room.getChildren()) {
                child.dispose();
            }
            if (known.picture().isEmpty()) {
                Nothing.yet(room, context, "picture.empty").offer(PlantUiWords.get("picture.import"), this::choose);
            } else {
                fill(known);
            }
        }
        open.ifPresent(now -> {
            known.image().ifPresent(now.floor()::picture);
            now.slider().today(known.today());
            now.floor().show(looks);
            now.table().reload();
        });
        shown = known.picture();
        room.layout(true, true);
        if (open.isEmpty()) {
            context.ready();
        }
    }

    private void fill(Known known) {
        Controls controls = context.theme().controls();
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        FloorCanvas floor = new FloorCanvas(sash, context.theme(), this::select, this::put);
        TableKit<PointLook> table = new TableKit<>(sash, context, new PointTable(known.times()).of(() -> looks));
        sash.setWeights(62, 38);
        DaySlider slider = new DaySlider(room, context, known.today(), day -> reload());
        Composite legend = controls.row(room);
        PointMarks.all().forEach(mark -> legend(legend, mark));
        Composite bar = controls.row(room);
        controls.mainButton(bar, PlantUiWords.get("picture.results"), this::results);
        Button place = controls.button(bar, PlantUiWords.get("picture.place"), this::place);
        controls.button(bar, PlantUiWords.get("picture.import"), this::choose);
        open = Optional.of(new Open(floor, table, slider, place));
        table.onSelect(rows -> rows.stream()
                .findFirst()
                .ifPresent(look -> floor.choose(look.point().name())));
        table.onOpen(look -> results());
        table.onLoaded(context::ready);
    }

    private void legend(Composite parent, Mark mark) {
        Composite one = context.theme().controls().box(parent, 2);
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
        FileDialog dialog = new FileDialog(room.getShell(), SWT.OPEN);
        dialog.setText(PlantUiWords.get("picture.choose-file"));
        dialog.setFilterExtensions(new String[] {"*.png;*.jpg;*.jpeg", "*"});
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::read);
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
