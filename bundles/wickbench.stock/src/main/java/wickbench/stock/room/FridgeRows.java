package wickbench.stock.room;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.journal.EntryRef;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.LogShape;
import wickbench.stock.Lot;
import wickbench.stock.room.StockView.Topic;

/** Fridges as entries tell of them. */
final class FridgeRows {
    private FridgeRows() {}

    /** A fridge with what its newest log says of its end. */
    record Heard(Fridge fridge, Optional<Excursion> outside) {}

    /** Returns all fridges without their lots, by id. */
    static List<Fridge> all(Events events) {
        return heard(events).stream().map(Heard::fridge).toList();
    }

    /** Returns all with how they stood at their last reading, by id; logs are long, so each is parsed once. */
    static List<Heard> heard(Events events) {
        Map<String, Fridge> fridges = new TreeMap<>();
        events.fridges().forEach(said -> fridges.put(said.subject(), FridgeJson.fridge(said)));
        Map<String, HeardFridge> ends = events.heard();
        return fridges.values().stream()
                .map(fridge -> heard(fridge, Optional.ofNullable(ends.get(fridge.id()))))
                .toList();
    }

    private static Heard heard(Fridge fridge, Optional<HeardFridge> end) {
        return new Heard(with(fridge, end.map(HeardFridge::to), List.of()), end.flatMap(HeardFridge::outside));
    }

    /** Returns which of the lots lie in a fridge and could still be used. */
    static List<String> inside(String fridge, List<Lot> lots) {
        return lots.stream()
                .filter(lot ->
                        lot.state().kept() && lot.place().filter(fridge::equals).isPresent())
                .map(lot -> lot.id().value())
                .toList();
    }

    static Fridge with(Fridge fridge, Optional<Instant> until, List<String> lots) {
        return new Fridge(fridge.id(), fridge.name(), fridge.low(), fridge.high(), fridge.logger(), until, lots);
    }

    /** Returns what was last said of the files of a fridge's logger. */
    static LogShape shape(Events events, String fridge) {
        return events.said(Topic.FRIDGE, fridge).stream()
                .filter(said -> said.kind().equals(FridgeJson.MAPPED))
                .reduce((older, newer) -> newer)
                .map(FridgeJson::shape)
                .orElse(LogShape.UNSAID);
    }

    /** A log with the entry that tells of it. */
    record Kept(EntryRef entry, FridgeJson.Log log) {}

    /** Returns every log of a fridge, earliest first. */
    static List<Kept> logs(Events events, String fridge) {
        return events.said(Topic.FRIDGE, fridge).stream()
                .filter(FridgeRows::isLog)
                .map(said -> new Kept(said.entry(), FridgeJson.log(said)))
                .sorted(Comparator.comparing(kept -> kept.log().from()))
                .toList();
    }

    static boolean isLog(Events.Said said) {
        return said.kind().equals(FridgeJson.LOGGED) || said.kind().equals(FridgeJson.MEASURED);
    }
}
