package wickbench.stock.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;

/** What the tab of the fridges shows; read off the UI thread. */
record FridgeDesk(StockDoors doors) {

    /** What is known; the trace of the chosen fridge, if there is any fridge. */
    record Known(List<Fridge> fridges, Optional<FridgeTrace> trace, Rights rights, SiteTimes times, Instant now) {}

    /**
     * Reads it.
     *
     * @param id the fridge that is chosen; the first where there is no such one
     * @param days how far back
     */
    Known known(Optional<String> id, int days, Optional<PersonId> actor) {
        List<Fridge> fridges = doors.fridges().all();
        Instant now = doors.clock().instant();
        Optional<Fridge> chosen = fridges.stream()
                .filter(fridge -> id.filter(fridge.id()::equals).isPresent())
                .findFirst()
                .or(() -> fridges.stream().findFirst());
        return new Known(
                fridges,
                chosen.map(fridge -> doors.fridges().trace(fridge.id(), now.minus(Duration.ofDays(days)), now)),
                doors.rights(actor),
                new SiteTimes(doors.room().zone()),
                now);
    }
}
