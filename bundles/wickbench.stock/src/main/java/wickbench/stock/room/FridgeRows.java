package wickbench.stock.room;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.journal.EntryRef;
import wickbench.stock.Fridge;
import wickbench.stock.LogShape;
import wickbench.stock.room.StockView.Topic;

/** Fridges as entries tell of them. */
final class FridgeRows {
    private FridgeRows() {}

    /** Returns all fridges without their lots, by id. */
    static List<Fridge> all(Events events) {
        Map<String, Fridge> fridges = new TreeMap<>();
        Map<String, Instant> heard = new LinkedHashMap<>();
        for (Events.Said said : events.said(Topic.FRIDGE)) {
            if (said.kind().equals(FridgeJson.REGISTERED)) {
                fridges.put(said.subject(), FridgeJson.fridge(said));
            } else if (isLog(said)) {
                heard.merge(said.subject(), until(said), (one, other) -> one.isAfter(other) ? one : other);
            }
        }
        return fridges.values().stream()
                .map(fridge -> with(fridge, Optional.ofNullable(heard.get(fridge.id())), List.of()))
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

    private static boolean isLog(Events.Said said) {
        return said.kind().equals(FridgeJson.LOGGED) || said.kind().equals(FridgeJson.MEASURED);
    }

    private static Instant until(Events.Said said) {
        return FridgeJson.log(said).to();
    }
}
