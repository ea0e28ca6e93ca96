package wickbench.bench.ui;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotFacts;
import wickbench.api.lot.LotId;
import wickbench.api.reading.RecordedReading;

/** The lots from which strips can be taken at one instant; the stock room is asked once for each kit, not for each strip. */
final class LotsInReach {
    private final BenchDoors doors;
    private final Instant now;
    private final Map<String, List<LotId>> fit = new HashMap<>();

    LotsInReach(BenchDoors doors) {
        this.doors = doors;
        this.now = doors.home().clock().instant();
    }

    /** Returns the lot for the next strip: that of the first as long as it is fit. */
    LotId next(RecordedReading first) {
        LotId same = first.reading().lot();
        List<LotId> lots = fit.computeIfAbsent(first.method().kit(), this::ask);
        return lots.isEmpty() || lots.contains(same) ? same : lots.get(0);
    }

    /** Returns the lot from which a strip of a kit would be taken; empty where none is fit, or no stock is kept. */
    Optional<LotId> first(String kit) {
        return fit.computeIfAbsent(kit, this::ask).stream().findFirst();
    }

    private List<LotId> ask(String kit) {
        return doors.lots().stream()
                .flatMap(lots -> lots.fitFor(kit, now).stream())
                .map(LotFacts::lot)
                .toList();
    }
}
