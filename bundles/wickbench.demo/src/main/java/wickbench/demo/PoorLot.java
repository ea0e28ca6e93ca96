package wickbench.demo;

import java.util.stream.Stream;
import wickbench.api.lot.LotId;
import wickbench.api.method.Seen;
import wickbench.api.reading.RecordedReading;

/** One lot of the milk kit loses its control line far too often. */
final class PoorLot implements Chapter {
    private static final String KIT = "milk";
    private static final int IN_USE_AFTER_MONTHS = 4;
    private static final double INVALID_RATE = 0.12;

    private final Plant.Kit kit;
    private final LotId lot;
    private final Share poor = new Share();
    private final Share others = new Share();

    private PoorLot(Plant.Kit kit, LotId lot) {
        this.kit = kit;
        this.lot = lot;
    }

    static PoorLot in(Plant plant, Span span, Lots lots) {
        Plant.Kit kit = plant.kits().stream()
                .filter(each -> each.id().equals(KIT))
                .findFirst()
                .orElseThrow();
        return new PoorLot(kit, lots.inUse(kit, span.after(IN_USE_AFTER_MONTHS)));
    }

    @Override
    public double invalidRate(LotId of, double usual) {
        return of.equals(lot) ? INVALID_RATE : usual;
    }

    @Override
    public void hear(RecordedReading recorded) {
        if (recorded.method().kit().equals(kit.name())) {
            Share share = recorded.reading().lot().equals(lot) ? poor : others;
            share.count(recorded.reading().strip().control() == Seen.NOT_SEEN);
        }
    }

    @Override
    public Told told() {
        return new Told(
                "poor-lot",
                Stream.concat(
                                poor.told("no_control_line_in_lot", "strips_in_lot").stream(),
                                others.told("no_control_line_in_others", "strips_in_others").stream())
                        .toList());
    }
}
