package wickbench.stock.room;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.authority.Signature;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.words.Coded;
import wickbench.stock.Device;
import wickbench.stock.room.StockView.Topic;

/** Devices as entries tell of them: {@code device.calibrated} and {@code device.retired}. */
final class DeviceRows {
    static final String CALIBRATED = "device.calibrated";
    static final String RETIRED = "device.retired";

    private DeviceRows() {}

    static Json.Obj calibrated(Device device) {
        return Json.object()
                .with("device", device.id())
                .with("type", device.type().code())
                .with("name", device.name())
                .with("calibrated", device.calibrated().toString())
                .with("due", device.due().toString())
                .withText("certificate", device.certificate());
    }

    static Json.Obj retired(String device, String reason) {
        return Json.object().with("device", device).with("reason", reason);
    }

    static List<Device> all(Events events) {
        return fold(events, LocalDate.MAX, Instant.MAX);
    }

    /**
     * Returns the devices in use at an instant whose calibration had run out on that day.
     *
     * <p>A calibration made later does not make good what was measured before it.
     */
    static List<Device> overdue(Events events, LocalDate day, Instant at) {
        return fold(events, day, at).stream()
                .filter(device -> device.overdue(day))
                .toList();
    }

    private static List<Device> fold(Events events, LocalDate day, Instant at) {
        Map<String, Device> devices = new LinkedHashMap<>();
        for (Events.Said said : events.remembered(Topic.DEVICE)) {
            if (said.kind().equals(CALIBRATED)) {
                Device device = read(said);
                if (!device.calibrated().isAfter(day)) {
                    devices.put(said.subject(), device);
                }
            } else if (said.kind().equals(RETIRED) && !said.at().isAfter(at)) {
                devices.computeIfPresent(said.subject(), (id, device) -> retired(device, said));
            }
        }
        return List.copyOf(devices.values());
    }

    private static Device retired(Device device, Events.Said said) {
        return new Device(
                device.id(),
                device.type(),
                device.name(),
                device.calibrated(),
                device.due(),
                device.certificate(),
                Optional.of(said.at()));
    }

    private static Device read(Events.Said said) {
        Fields fields = Fields.of(said.entry().toString(), said.body());
        fields.has(Signature.MEMBER);
        String id = fields.text("device");
        Optional<Device.Type> type = fields.optional("type", code -> Coded.of(Device.Type.class, code));
        String name = fields.text("name");
        Optional<LocalDate> calibrated = fields.optional("calibrated", LotEventReader::date);
        Optional<LocalDate> due = fields.optional("due", LotEventReader::date);
        Optional<String> certificate = fields.optionalText("certificate");
        return fields.finish(() -> new Device(
                        id,
                        type.orElseThrow(),
                        name,
                        calibrated.orElseThrow(),
                        due.orElseThrow(),
                        certificate,
                        Optional.empty()))
                .orRefuse();
    }
}
