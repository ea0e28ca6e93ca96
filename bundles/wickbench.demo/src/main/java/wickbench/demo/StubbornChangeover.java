package wickbench.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;

/**
 * Hazelnut stays at two points of line 2 at every changeover, until the cleaning procedure changes; shortly before the end it comes
 * back once at the pump seal, and that hold waits for whoever looks at the demonstration.
 */
final class StubbornChangeover implements Chapter {
    static final String LINE = "L2";
    static final List<String> PLACES = List.of("L2 depositor nozzles", "L2 pump seal");
    private static final String ALLERGEN = "hazelnut";
    private static final int CHANGES_AFTER_MONTHS = 8;
    private static final double MORE = 1.6;
    private static final String COMES_BACK_AT = "L2 pump seal";
    private static final double COMES_BACK = 2.6;
    private static final int COMES_BACK_DAYS = 12;

    private final Instant change;
    private final Instant comesBack;
    private boolean cameBack;
    private final Share before = new Share();
    private final Share after = new Share();

    private StubbornChangeover(Instant change, Instant comesBack) {
        this.change = change;
        this.comesBack = comesBack;
    }

    static StubbornChangeover in(Span span) {
        return new StubbornChangeover(span.startOf(changes(span)), comesBack(span));
    }

    private static Instant comesBack(Span span) {
        return span.startOf(span.until().minusDays(COMES_BACK_DAYS));
    }

    /** Tells whether a hold is the one that nobody has decided on when the demonstration ends. */
    static boolean isLeft(LineBook.Strip held, Span span) {
        return COMES_BACK_AT.equals(held.sample().place())
                && held.recorded().method().target().name().equals(ALLERGEN)
                && !held.at().isBefore(comesBack(span));
    }

    /** Returns the day from which the changed procedure holds. */
    static LocalDate changes(Span span) {
        return span.after(CHANGES_AFTER_MONTHS);
    }

    @Override
    public double moreResidue(Plant.Point point, Plant.Kit kit, Instant when) {
        boolean stubborn = PLACES.contains(point.name()) && kit.allergen().equals(ALLERGEN);
        if (stubborn && when.isBefore(change)) {
            return MORE;
        }
        return stubborn && comesBackNow(point.name(), when) ? COMES_BACK : 0;
    }

    private boolean comesBackNow(String place, Instant when) {
        return place.equals(COMES_BACK_AT) && !cameBack && !when.isBefore(comesBack);
    }

    @Override
    public int procedureEdition(Plant.Line line, int usual, Instant when) {
        return line.id().equals(LINE) && !when.isBefore(change) ? usual + 1 : usual;
    }

    @Override
    public void hear(RecordedReading recorded) {
        if (concerns(recorded)) {
            cameBack |= cameBack(recorded);
            share(recorded.reading())
                    .ifPresent(share -> share.count(recorded.verdict().outcome().positive()));
        }
    }

    private boolean cameBack(RecordedReading recorded) {
        return recorded.verdict().outcome().positive()
                && recorded.reading().sample().place().equals(COMES_BACK_AT)
                && recorded.reading()
                        .times()
                        .started()
                        .filter(start -> !start.isBefore(comesBack))
                        .isPresent();
    }

    private static boolean concerns(RecordedReading recorded) {
        Reading reading = recorded.reading();
        return reading.sample().reason().equals(Optional.of(Reason.CHANGEOVER))
                && PLACES.contains(reading.sample().place())
                && reading.sample().dilution().compareTo(BigDecimal.ONE) == 0
                && recorded.method().target().name().equals(ALLERGEN);
    }

    private Optional<Share> share(Reading reading) {
        return reading.times().started().map(start -> start.isBefore(change) ? before : after);
    }

    @Override
    public Told told() {
        return new Told(
                "stubborn-changeover",
                Stream.concat(
                                before.told("positive_before", "strips_before").stream(),
                                after.told("positive_after", "strips_after").stream())
                        .toList());
    }
}
