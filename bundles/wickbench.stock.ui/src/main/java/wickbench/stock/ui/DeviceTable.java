package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.stock.Device;
import wickbench.stock.StockTerms;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** Equipment with its calibration, first due first. */
record DeviceTable(LocalDate today) {
    private static final int SOON = 30;

    TableSpec<Device> of(Supplier<List<Device>> devices) {
        List<Column<Device>> columns = List.of(
                text("device", 90, Device::id),
                text("called", 190, Device::name),
                text("type", 90, device -> StockTerms.type(device.type())),
                Column.<Device>marked("standing", title("standing"), 130, this::standing),
                text("due", 100, device -> device.due().toString()),
                text("calibrated", 100, device -> device.calibrated().toString()),
                text("certificate", 120, device -> device.certificate().orElse("")));
        return new TableSpec<>(
                "stock.equipment",
                StockUiWords.get("devices.name"),
                columns,
                new FreshRows<>(devices, columns),
                Optional.empty(),
                StockUiWords.get("devices.none"));
    }

    Mark standing(Device device) {
        String word = StockTerms.standing(device, today);
        if (device.retired().isPresent()) {
            return new Mark(word, Shape.BAR, Meaning.NEUTRAL);
        }
        if (device.overdue(today)) {
            return new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
        }
        boolean soon = device.due().isBefore(today.plusDays(SOON));
        return soon
                ? new Mark(StockUiWords.get("devices.soon"), Shape.DIAMOND, Meaning.CAUTION)
                : new Mark(word, Shape.RING, Meaning.CALM);
    }

    private static Column<Device> text(String id, int width, Function<Device, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return StockUiWords.get("column." + id);
    }
}
