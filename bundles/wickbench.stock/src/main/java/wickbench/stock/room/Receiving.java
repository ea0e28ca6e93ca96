package wickbench.stock.room;

import java.time.LocalDate;
import java.util.List;
import wickbench.stock.Companion;
import wickbench.stock.Delivery;
import wickbench.stock.Kit;
import wickbench.stock.Lot;
import wickbench.stock.LotMove;

/** What must be right of a delivery. */
final class Receiving {
    private static final int MOST_BOXES = 10_000;

    private Receiving() {}

    static void check(Delivery delivery, Shelves shelves) {
        Kit kit = shelves.read(new KitBook(List.of()), Events::kits)
                .at(delivery.kit(), shelves.now())
                .orElseThrow(() -> Said.wrong("kit.unknown", delivery.kit()));
        if (delivery.boxes() < 1 || delivery.boxes() > MOST_BOXES) {
            throw Said.wrong("boxes.expected", MOST_BOXES, delivery.boxes());
        }
        if (delivery.at().isAfter(shelves.now())) {
            throw Said.wrong("time.ahead", delivery.at());
        }
        delivery.produced().filter(day -> day.isAfter(delivery.expiry())).ifPresent(day -> {
            throw Said.wrong("produced.after", day, delivery.expiry());
        });
        for (Companion companion : delivery.companions()) {
            kit.part(companion.part())
                    .filter(part -> !part.strip())
                    .orElseThrow(() -> Said.wrong("part.unknown", companion.part(), kit.name()));
        }
        delivery.place().ifPresent(place -> fridge(place, shelves));
        List<String> written = shelves.inserts(delivery.kit(), delivery.at());
        if (delivery.insert().isEmpty() && !written.isEmpty()) {
            throw Said.wrong("insert.expected", String.join(", ", written));
        }
        LocalDate day = LocalDate.ofInstant(delivery.at(), shelves.zone());
        if (day.isAfter(delivery.expiry())) {
            throw Said.refused("receive.expired", delivery.lot(), delivery.expiry());
        }
    }

    /** Another delivery of a lot must be of the same kit and carry the same date, else one of the labels was misread. */
    static void again(Delivery delivery, Lot lot) {
        if (!lot.kit().name().equals(delivery.kit())) {
            throw Said.refused("receive.other-kit", delivery.lot(), lot.kit().name(), delivery.kit());
        }
        if (LotMove.RECEIVE.from(lot.state()).isEmpty()) {
            throw Said.refused(
                    "move.refused",
                    lot.id(),
                    StockWords.get("state." + lot.state().code()),
                    StockWords.get("move.receive"));
        }
    }

    static void fridge(String id, Shelves shelves) {
        boolean known = shelves.read(List.<wickbench.stock.Fridge>of(), FridgeRows::all).stream()
                .anyMatch(fridge -> fridge.id().equals(id));
        if (!known) {
            throw Said.wrong("fridge.unknown", id);
        }
    }

    /** @param compared the revisions with which its insert was compared */
    static LotEvent event(Delivery delivery, List<String> compared) {
        return new LotEvent.Received(
                delivery.lot(),
                delivery.at(),
                delivery.kit(),
                delivery.expiry(),
                delivery.boxes(),
                delivery.insert(),
                compared,
                delivery.serial(),
                delivery.produced(),
                delivery.place(),
                delivery.companions(),
                delivery.scan());
    }
}
