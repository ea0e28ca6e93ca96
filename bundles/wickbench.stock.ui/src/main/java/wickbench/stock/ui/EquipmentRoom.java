package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.shell.ActForm;
import wickbench.shell.PageContext;
import wickbench.stock.Device;
import wickbench.stock.StockTerms;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Room;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** The equipment: what is due for calibration, and the form that keeps a new one. */
final class EquipmentRoom implements Room {
    private final PageContext context;
    private final StockDoors doors;
    private final Composite room;
    private volatile List<Device> devices = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<Known> known = Optional.empty();
    private Optional<String> wanted = Optional.empty();
    private boolean typing;

    private record Known(List<Device> devices, Rights rights, LocalDate today) {}

    private record Open(TableKit<Device> table, Side side) {}

    EquipmentRoom(Composite parent, PageContext context, StockDoors doors) {
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
        var actor = context.actor();
        context.jobs()
                .run(
                        StockUiWords.get("devices.reading"),
                        progress -> new Known(
                                doors.room().equipment(),
                                doors.rights(actor),
                                LocalDate.ofInstant(
                                        doors.clock().instant(), doors.room().zone())),
                        this::take);
    }

    private void take(Known now) {
        known = Optional.of(now);
        devices = now.devices();
        if (open.isEmpty()) {
            fill(now);
        } else {
            open.get().table().reload();
        }
        room.layout(true, true);
    }

    private void fill(Known now) {
        Composite bar = context.theme().controls().row(room);
        context.theme().controls().mainButton(bar, StockUiWords.get("device.open"), () -> ask(Optional.empty()));
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<Device> table = new TableKit<>(sash, context, new DeviceTable(now.today()).of(() -> devices));
        Side side = new Side(sash, context.theme());
        sash.setWeights(62, 38);
        open = Optional.of(new Open(table, side));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(row -> ask(Optional.of(row))));
        table.onLoaded(() -> {
            if (table.rows().isEmpty()) {
                ask(Optional.empty());
            } else if (wanted.isPresent() || table.selected().isEmpty() && !typing) {
                table.select(first(table.rows()));
                wanted = Optional.empty();
            }
            context.ready();
        });
    }

    private Device first(List<Device> rows) {
        return rows.stream()
                .filter(row -> wanted.filter(row.id()::equals).isPresent())
                .findFirst()
                .orElse(rows.get(0));
    }

    /** Shows the device with this number. */
    @Override
    public void show(String argument) {
        wanted = Optional.of(argument);
        reload();
    }

    /** Asks for a calibration: of a device that is known, or of a new one. */
    private void ask(Optional<Device> device) {
        typing = device.isEmpty();
        Known now = known.orElseThrow();
        Side side = open.orElseThrow().side();
        side.fill(content -> {
            calibration(content, device, now, side);
            device.filter(some -> some.retired().isEmpty()).ifPresent(some -> retirement(content, some, now, side));
        });
    }

    private void calibration(Composite content, Optional<Device> device, Known now, Side side) {
        ActForm form = Forms.begin(
                content,
                context,
                device.isPresent() ? "calibrate" : "device",
                side::measure,
                this::leave,
                device.map(Device::id).orElse(""),
                device.map(Device::name).orElse(""));
        Field<Text> id = form.text("device.id", device.map(Device::id).orElse(""));
        id.control().setEditable(device.isEmpty());
        Field<Text> name = form.text("device.name", device.map(Device::name).orElse(""));
        Field<Combo> type = form.choice(
                "device.type",
                Arrays.stream(Device.Type.values()).map(StockTerms::type).toList());
        type.control().select(device.map(some -> some.type().ordinal()).orElse(0));
        Field<Text> on = form.text("device.calibrated", now.today().toString());
        Field<Text> due = form.text("device.due");
        Field<Text> certificate = form.text("device.certificate");
        form.<Device>act(
                "device.act",
                now.rights().may(Act.KEEP_STOCK),
                () -> {
                    Optional<String> which = Typed.words(id);
                    Optional<String> called = Typed.words(name);
                    Optional<LocalDate> last = Typed.date(on);
                    Optional<LocalDate> next = Typed.date(due);
                    if (which.isEmpty() || called.isEmpty() || last.isEmpty() || next.isEmpty()) {
                        return Optional.<Work<Device>>empty();
                    }
                    Device kept = new Device(
                            which.get(),
                            Device.Type.values()[type.control().getSelectionIndex()],
                            called.get(),
                            last.get(),
                            next.get(),
                            Typed.some(certificate),
                            Optional.empty());
                    return Optional.of(progress ->
                            doors.keeping().calibrated(kept, now.rights().by()));
                },
                this::kept);
    }

    private void retirement(Composite content, Device device, Known now, Side side) {
        ActForm form = Forms.begin(content, context, "retire", side::measure, this::leave, device.id());
        Field<Text> reason = form.text("form.reason");
        form.<Device>act(
                "retire.act",
                now.rights().may(Act.KEEP_STOCK),
                () -> Typed.words(reason)
                        .map(why -> progress -> doors.keeping()
                                .retire(device.id(), why, now.rights().by())),
                this::kept);
    }

    private void kept(Device device) {
        typing = false;
        context.say(StockUiWords.get("device.done", device.id()));
        reload();
    }

    private void leave() {
        typing = false;
        open.ifPresent(now -> now.table().reload());
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }
}
