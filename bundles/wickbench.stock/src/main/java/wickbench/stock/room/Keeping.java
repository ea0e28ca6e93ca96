package wickbench.stock.room;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.lot.LotId;
import wickbench.api.words.Decimals;
import wickbench.stock.Balance;
import wickbench.stock.Count;
import wickbench.stock.Delivery;
import wickbench.stock.Device;
import wickbench.stock.Kit;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.LotMove;
import wickbench.stock.Quarantine;
import wickbench.stock.Stockkeeping;
import wickbench.stock.Use;

/** Does what is done in the stock room, each act after a look at what it rests on. */
@Component
public final class Keeping implements Stockkeeping {
    private final Shelves shelves;
    private final Pen pen;

    @Activate
    public Keeping(@Reference Shelves shelves, @Reference Pen pen) {
        this.shelves = shelves;
        this.pen = pen;
    }

    @Override
    public synchronized Kit define(Kit kit, Actor by) {
        pen.write(Act.KEEP_STOCK, pen.draft(by, "kit.defined", KitJson.write(kit)), by);
        return kit;
    }

    @Override
    public synchronized Lot receive(Delivery delivery, Actor by) {
        Receiving.check(delivery, shelves);
        Optional<Lot> before = shelves.lot(delivery.lot(), shelves.now());
        before.ifPresent(lot -> Receiving.again(delivery, lot));
        LotEvent received = Receiving.event(delivery, shelves.inserts(delivery.kit(), delivery.at()));
        List<Draft> drafts = new ArrayList<>(List.of(pen.draft(by, received)));
        if (shelves.waiving(delivery.at()).atOnce(delivery.kit())) {
            drafts.add(pen.draft(by, new LotEvent.Waived(delivery.lot(), delivery.at(), Waiving.BY_PROFILE)));
        }
        pen.write(Act.KEEP_STOCK, drafts, by);
        return shelves.lot(delivery.lot(), shelves.now()).orElseThrow();
    }

    @Override
    public List<Use> checkReadings(LotId lot) {
        return LotChecks.readings(known(lot), shelves);
    }

    @Override
    public synchronized LotCheck check(LotId id, Actor by) {
        Lot lot = known(id);
        LotCheck check = LotChecks.judge(lot.kit().check(), LotChecks.readings(lot, shelves));
        move(lot, check.passed() ? LotMove.PASS : LotMove.REJECT);
        Draft checked = pen.draft(by, new LotEvent.Checked(id, shelves.now(), check));
        pen.write(Act.CHECK_LOT, check.passed() ? List.of(checked) : List.of(checked, rejection(lot, by)), by);
        return check;
    }

    private Draft rejection(Lot lot, Actor by) {
        return pen.draft(by, new LotEvent.Rejected(lot.id(), shelves.now(), since(lot), "check-failed"));
    }

    @Override
    public synchronized Lot waive(LotId id, String reason, Actor by) {
        Lot lot = known(id);
        if (!lot.waivable()) {
            throw refused("check.not-waivable", lot.kit().name());
        }
        move(lot, LotMove.WAIVE);
        return tell(Act.CHECK_LOT, new LotEvent.Waived(id, shelves.now(), Said.reason(reason)), by);
    }

    @Override
    public synchronized Lot reject(LotId id, Optional<Instant> since, String reason, Actor by) {
        Lot lot = known(id);
        move(lot, LotMove.REJECT);
        Instant from = since.orElseGet(() -> since(lot));
        return tell(Act.CHECK_LOT, new LotEvent.Rejected(id, shelves.now(), from, Said.reason(reason)), by);
    }

    /** A bad lot was bad from its first strip on, also where it was used before anybody received it. */
    private Instant since(Lot lot) {
        return shelves
                .uses("lot = ? order by taken fetch first 1 rows only", lot.id().value())
                .stream()
                .map(Use::taken)
                .filter(lot.received()::isAfter)
                .findFirst()
                .orElse(lot.received());
    }

    @Override
    public synchronized Lot quarantine(LotId id, String reason, Actor by) {
        move(known(id), LotMove.QUARANTINE);
        return tell(
                Act.KEEP_STOCK,
                new LotEvent.Quarantined(
                        id, shelves.now(), wickbench.stock.Cause.STATED, Said.reason(reason), Optional.empty()),
                by);
    }

    @Override
    public synchronized Lot release(LotId id, Optional<LocalDate> until, String reason, Actor by) {
        Lot lot = known(id);
        move(lot, LotMove.RELEASE);
        if (until.filter(day -> day.isAfter(lot.effective())).isPresent()) {
            throw refused("release.lengthens", until.orElseThrow(), lot.effective());
        }
        List<java.util.UUID> decided =
                lot.quarantines().stream().map(Quarantine::id).toList();
        return tell(
                Act.DECIDE_STORAGE, new LotEvent.Released(id, shelves.now(), decided, until, Said.reason(reason)), by);
    }

    @Override
    public synchronized Lot open(LotId id, Instant at, Map<String, LotId> with, Actor by) {
        Lot lot = knownAt(id, at);
        if (!lot.state().kept() || lot.sealedPouches() == 0) {
            throw refused("open.none", id, lot.state().code(), lot.sealedPouches());
        }
        Mixing.check(lot, with);
        return tell(Act.USE_STOCK, new LotEvent.Opened(id, at, with), by);
    }

    @Override
    public synchronized Lot take(LotId id, String part, BigDecimal amount, String reason, Actor by) {
        Lot lot = known(id);
        Balance balance = lot.parts().stream()
                .filter(each -> each.part().name().equals(part))
                .findFirst()
                .orElseThrow(() -> Said.wrong("part.unknown", part, lot.kit().name()));
        if (amount.signum() <= 0) {
            throw Said.wrong("amount.positive", Decimals.of(amount));
        }
        if (!lot.state().kept() || balance.left().compareTo(amount) < 0) {
            throw refused(
                    "lot.none-left",
                    id,
                    Decimals.of(balance.left()),
                    balance.part().unit());
        }
        return tell(Act.USE_STOCK, new LotEvent.Taken(id, shelves.now(), part, amount, Said.reason(reason)), by);
    }

    @Override
    public synchronized Lot count(Count count, Actor by) {
        Lot lot = knownAt(count.lot(), count.at());
        return tell(Act.KEEP_STOCK, Counting.event(count, lot), by);
    }

    @Override
    public synchronized Lot place(LotId id, String fridge, Instant at, Actor by) {
        knownAt(id, at);
        Receiving.fridge(fridge, shelves);
        return tell(Act.KEEP_STOCK, new LotEvent.Placed(id, at, fridge), by);
    }

    @Override
    public synchronized Lot usedUp(LotId id, Actor by) {
        Lot lot = known(id);
        move(lot, LotMove.USE_UP);
        if (lot.strips().left().signum() > 0) {
            throw refused("used-up.left", id, Decimals.of(lot.strips().left()));
        }
        return tell(Act.KEEP_STOCK, new LotEvent.UsedUp(id, shelves.now()), by);
    }

    @Override
    public synchronized Lot destroy(LotId id, String reason, Actor by) {
        move(known(id), LotMove.DESTROY);
        return tell(Act.KEEP_STOCK, new LotEvent.Destroyed(id, shelves.now(), Said.reason(reason)), by);
    }

    @Override
    public synchronized Device calibrated(Device device, Actor by) {
        if (device.due().isBefore(device.calibrated())) {
            throw Said.wrong("device.due", device.due(), device.calibrated());
        }
        pen.write(Act.KEEP_STOCK, pen.draft(by, DeviceRows.CALIBRATED, DeviceRows.calibrated(device)), by);
        return device(device.id());
    }

    @Override
    public synchronized Device retire(String device, String reason, Actor by) {
        device(device);
        pen.write(
                Act.KEEP_STOCK, pen.draft(by, DeviceRows.RETIRED, DeviceRows.retired(device, Said.reason(reason))), by);
        return device(device);
    }

    private Device device(String id) {
        return shelves.read(List.<Device>of(), DeviceRows::all).stream()
                .filter(device -> device.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Said.wrong("device.unknown", id));
    }

    private Lot known(LotId id) {
        return knownAt(id, shelves.now());
    }

    private Lot knownAt(LotId id, Instant at) {
        if (at.isAfter(shelves.now())) {
            throw Said.wrong("time.ahead", at);
        }
        return shelves.lot(id, at).orElseThrow(() -> Said.wrong("lot.unknown", id));
    }

    private static void move(Lot lot, LotMove move) {
        if (move.from(lot.state()).isEmpty()) {
            throw refused(
                    "move.refused",
                    lot.id(),
                    StockWords.get("state." + lot.state().code()),
                    StockWords.get("move." + move.code()));
        }
    }

    private Lot tell(Act act, LotEvent event, Actor by) {
        pen.write(act, pen.draft(by, event), by);
        return shelves.lot(event.lot(), shelves.now()).orElseThrow();
    }

    private static Refusal refused(String code, Object... values) {
        return Said.refused(code, values);
    }
}
