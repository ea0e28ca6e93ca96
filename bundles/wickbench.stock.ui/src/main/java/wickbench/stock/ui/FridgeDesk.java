package wickbench.stock.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;

/** What the tab of the fridges shows; read off the UI thread. */
record FridgeDesk(StockDoors doors) {
    private static final int USUAL = 30;

    /** How many days can be looked back on. */
    static final List<Integer> SPANS = List.of(7, 30, 90, 365);

    /**
     * What is known; the trace of the chosen fridge, if there is any fridge.
     *
     * @param days how far back it goes
     */
    record Known(
            List<Fridge> fridges, Optional<FridgeTrace> trace, int days, Rights rights, SiteTimes times, Instant now) {}

    /**
     * Reads it.
     *
     * @param id the fridge that is chosen; the first where there is no such one
     * @param days how far back; where nobody said, far enough to have the last excursion in sight
     */
    Known known(Optional<String> id, Optional<Integer> days, Optional<PersonId> actor) {
        List<Fridge> fridges = doors.fridges().all();
        Instant now = doors.clock().instant();
        Optional<Fridge> chosen = fridges.stream()
                .filter(fridge -> id.filter(fridge.id()::equals).isPresent())
                .findFirst()
                .or(() -> fridges.stream().findFirst());
        int back = days.or(() -> chosen.map(fridge -> withLast(fridge, now))).orElse(USUAL);
        return new Known(
                fridges,
                chosen.map(fridge -> trace(fridge, back, now)),
                back,
                doors.rights(actor),
                new SiteTimes(doors.room().zone()),
                now);
    }

    private int withLast(Fridge fridge, Instant now) {
        List<Excursion> all = trace(fridge, SPANS.get(SPANS.size() - 1), now).excursions();
        return all.isEmpty()
                ? USUAL
                : Math.max(
                        USUAL,
                        span(Duration.between(all.get(all.size() - 1).from(), now)
                                        .toDays()
                                + 1));
    }

    private FridgeTrace trace(Fridge fridge, int days, Instant now) {
        return doors.fridges().trace(fridge.id(), now.minus(Duration.ofDays(days)), now);
    }

    /** Returns the shortest span that is as long; the longest where none is. */
    static int span(long days) {
        return SPANS.stream().filter(span -> span >= days).findFirst().orElse(SPANS.get(SPANS.size() - 1));
    }
}
