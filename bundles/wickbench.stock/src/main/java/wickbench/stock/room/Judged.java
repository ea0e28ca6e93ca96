package wickbench.stock.room;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import wickbench.api.lot.LotId;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.Kit;
import wickbench.stock.Lot;

/** Which lots a log speaks against: those that lay inside while their kit's allowance was passed. */
final class Judged {
    private final Shelves shelves;
    private final String fridge;
    private final UUID about;

    Judged(Shelves shelves, String fridge, UUID about) {
        this.shelves = shelves;
        this.fridge = fridge;
        this.about = about;
    }

    /** Returns a quarantine for each lot, from the first time on that its kit does not allow; one of its own where it was frozen. */
    List<LotEvent.Quarantined> of(Function<Kit, List<Excursion>> outside) {
        Map<Held, LotEvent.Quarantined> held = new LinkedHashMap<>();
        Map<Instant, List<Lot>> known = new LinkedHashMap<>();
        for (Kit kit : shelves.read(new KitBook(List.of()), Events::kits).newest()) {
            for (Excursion each : outside.apply(kit)) {
                if (tooLong(each, each.length(), kit.storage())) {
                    known.computeIfAbsent(each.to(), shelves::lots).stream()
                            .filter(lot -> lot.kit().name().equals(kit.name()) && inside(lot))
                            .filter(lot ->
                                    tooLong(each, shared(each, lot), lot.kit().storage()))
                            .forEach(lot -> held.putIfAbsent(
                                    new Held(lot.id(), each.cause() == Cause.FROZEN), event(lot, each)));
                }
            }
        }
        return List.copyOf(held.values());
    }

    /** What froze may be spoilt however short and mild the cold around it was, so that is decided on by its name. */
    private record Held(LotId lot, boolean frozen) {}

    private boolean inside(Lot lot) {
        return lot.state().kept() && lot.place().filter(fridge::equals).isPresent();
    }

    /** Returns how long the lot was there meanwhile. */
    private static Duration shared(Excursion each, Lot lot) {
        Instant since = each.from().isBefore(lot.received()) ? lot.received() : each.from();
        return Duration.between(since, each.to());
    }

    private static boolean tooLong(Excursion each, Duration length, Kit.Storage storage) {
        int allowed = switch (each.cause()) {
            case WARM -> storage.warmMinutes();
            case COLD -> storage.coldMinutes();
            case GAP, STUCK -> storage.gapMinutes();
            case FROZEN, STATED -> 0;
        };
        return length.compareTo(Duration.ofMinutes(allowed)) > 0;
    }

    private LotEvent.Quarantined event(Lot lot, Excursion each) {
        Instant since = each.from().isBefore(lot.received()) ? lot.received() : each.from();
        // the same in every language: the entry is read by people and programs of any
        String reason = String.format(Locale.ROOT, "%s %s/%s %.1f °C", fridge, each.from(), each.to(), each.peak());
        return new LotEvent.Quarantined(lot.id(), since, each.cause(), reason, Optional.of(about));
    }
}
