package wickbench.stock.room;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import wickbench.api.lot.LotId;
import wickbench.stock.Device;
import wickbench.stock.Due;
import wickbench.stock.Due.What;
import wickbench.stock.Fridge;
import wickbench.stock.Lot;
import wickbench.stock.LotState;
import wickbench.stock.Outlook;
import wickbench.stock.Stockroom.Unreceived;
import wickbench.stock.room.FridgeRows.Heard;

/** What somebody must see to. */
final class Dues {
    /** A fridge of which nothing was heard for longer is named. */
    private static final int SILENT_DAYS = 7;

    private final ZoneId zone;
    private final LocalDate today;
    private final LocalDate last;
    private final List<Due> found = new ArrayList<>();

    Dues(ZoneId zone, LocalDate today, int days) {
        this.zone = zone;
        this.today = today;
        this.last = today.plusDays(days);
    }

    List<Due> of(
            List<Lot> lots,
            List<Outlook> outlooks,
            List<Device> devices,
            List<Heard> fridges,
            List<Unreceived> unreceived,
            Set<LotId> clashing) {
        lots.forEach(lot -> lot(lot, clashing.contains(lot.id())));
        outlooks.forEach(this::outlook);
        devices.forEach(this::device);
        fridges.forEach(fridge ->
                fridge(fridge, FridgeRows.inside(fridge.fridge().id(), lots).size()));
        unreceived.forEach(lot -> add(What.COUNT, today, lot.lot().value(), lot.kit(), lot.strips()));
        found.sort(Comparator.comparing((Due due) -> due.what().ordinal())
                .thenComparing(Due::day)
                .thenComparing(Due::subject));
        return List.copyOf(found);
    }

    private void lot(Lot lot, boolean decidedDifferently) {
        String id = lot.id().value();
        String kit = lot.kit().name();
        if (decidedDifferently || !lot.clashes().isEmpty()) {
            add(What.SETTLE, today, id, kit, Math.max(1, lot.clashes().size()));
        }
        if (lot.strips().missing().signum() > 0) {
            add(What.COUNT, today, id, kit, lot.strips().missing().longValue());
        }
        if (!lot.state().kept()) {
            return;
        }
        long left = lot.strips().left().longValue();
        if (lot.state().quarantined()) {
            add(What.DECIDE, today, id, kit, left);
        }
        if (lot.state() == LotState.AWAITING_CHECK) {
            add(What.CHECK, today, id, kit, left);
        }
        if (lot.otherInsert()) {
            add(What.INSERT, today, id, lot.insert().orElseThrow(), left);
        }
        if (left > 0) {
            add(lot.expired(today) ? What.EXPIRED : What.EXPIRES, lot.effective(), id, kit, left);
        }
    }

    private void outlook(Outlook outlook) {
        outlook.orderBy().ifPresent(day -> add(What.ORDER, day, outlook.kit(), outlook.kit(), outlook.boxes()));
    }

    private void device(Device device) {
        if (device.retired().isEmpty()) {
            add(What.CALIBRATE, device.due(), device.id(), device.name(), 0);
        }
    }

    /** An empty fridge may be as warm as it likes. */
    private void fridge(Heard heard, int lots) {
        Fridge fridge = heard.fridge();
        if (lots == 0) {
            return;
        }
        heard.outside()
                .ifPresent(each ->
                        add(What.OUTSIDE, LocalDate.ofInstant(each.from(), zone), fridge.id(), fridge.name(), lots));
        fridge.until()
                .map(until -> LocalDate.ofInstant(until, zone).plusDays(SILENT_DAYS))
                .filter(day -> !day.isAfter(today))
                .ifPresent(day -> add(What.LOGGER, day, fridge.id(), fridge.name(), 0));
    }

    private void add(What what, LocalDate day, String subject, String about, long fact) {
        if (!day.isAfter(last)) {
            found.add(new Due(what, day, subject, about, fact));
        }
    }
}
