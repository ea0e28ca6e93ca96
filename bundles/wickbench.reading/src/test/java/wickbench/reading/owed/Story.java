package wickbench.reading.owed;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.doubt.Doubt;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.profile.ControlRule;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;
import wickbench.reading.owed.Fact.Cleaned;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Doubted;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Named;
import wickbench.reading.owed.Fact.Ran;
import wickbench.reading.owed.Fact.RanStrip;
import wickbench.reading.owed.Fact.Ruled;
import wickbench.reading.owed.Fact.Spot;
import wickbench.reading.owed.Fact.Tested;
import wickbench.reading.owed.Fact.Trusted;

/** Facts one minute after another. */
final class Story {
    static final Set<Owed> AFTER_POSITIVE = Set.of(Owed.HOLD, Owed.RE_CLEAN, Owed.RE_TEST);
    private static final Instant BEGIN = Instant.parse("2026-03-02T06:00:00Z");

    private final List<Fact> facts = new ArrayList<>();
    private String method = "nut-swab";
    private String lot = "L77";
    private String reader = "op-01";

    /** Tells on with strips of this kit. */
    Story kit(String method, String lot) {
        this.method = method;
        this.lot = lot;
        return this;
    }

    /** Tells on with strips that this person reads. */
    Story reader(String person) {
        this.reader = person;
        return this;
    }

    Instant next() {
        return BEGIN.plusSeconds(60L * facts.size());
    }

    private UUID id() {
        return new UUID(facts.size(), 7);
    }

    Fact told(Fact fact) {
        facts.add(fact);
        return fact;
    }

    Fact invalid(String sample, String place) {
        return test(sample, place, 1, Outcome.INVALID, false, Owed.REPEAT);
    }

    Fact sign(String sample, String place) {
        return test(sample, place, 1, Outcome.INVALID, true, Owed.REPEAT, Owed.HOLD);
    }

    Fact negative(String sample, String place) {
        return test(sample, place, 1, Outcome.NEGATIVE, false);
    }

    Fact positive(String sample, String place) {
        return test(sample, place, 1, Outcome.POSITIVE, false, AFTER_POSITIVE.toArray(Owed[]::new));
    }

    Fact test(String sample, String place, int dilution, Outcome outcome, boolean sign, Owed... owed) {
        return tested(sample, place, dilution, Optional.empty(), Optional.empty(), outcome, sign, Set.of(owed));
    }

    Fact cleanedThenNegative(String sample, String place) {
        return tested(
                sample,
                place,
                1,
                Optional.empty(),
                Optional.of(Reason.AFTER_CLEANING),
                Outcome.NEGATIVE,
                false,
                Set.of());
    }

    Fact control(RunControl control, Outcome outcome) {
        boolean good = control == RunControl.BLANK ? outcome == Outcome.NEGATIVE : outcome.positive();
        Set<Owed> owed = good ? Set.of() : Set.of(Owed.REPEAT);
        return tested("C", "", 1, Optional.of(control), Optional.empty(), outcome, false, owed);
    }

    private Fact tested(
            String sample,
            String place,
            int dilution,
            Optional<RunControl> control,
            Optional<Reason> reason,
            Outcome outcome,
            boolean sign,
            Set<Owed> owed) {
        return told(new Tested(
                id(),
                next(),
                sample,
                new Spot(place, Optional.of("Line 2")),
                new MethodId(method),
                new LotId(lot),
                new PersonId(reader),
                BigDecimal.valueOf(dilution),
                control,
                reason,
                outcome,
                sign,
                owed));
    }

    Fact clean(String place) {
        return told(new Cleaned(id(), next(), new Spot(place, Optional.empty())));
    }

    Fact look(String place, Visual result) {
        return told(new Looked(id(), next(), new Spot(place, Optional.of("Line 2")), result));
    }

    Fact neighbours(Fact of, String... points) {
        return told(new Named(id(), next(), of.id(), List.of(points)));
    }

    Fact decide(Fact of, Owed owed, Fact... about) {
        return told(new Decided(
                id(), next(), of.id(), owed, Stream.of(about).map(Fact::id).toList()));
    }

    Fact doubt(Doubt doubt) {
        return told(new Doubted(id(), next(), doubt));
    }

    Fact trust(Fact... doubts) {
        return told(new Trusted(id(), next(), Stream.of(doubts).map(Fact::id).toList()));
    }

    /** From now on the site asks for these controls. */
    Fact rule(ControlRule controls) {
        return told(new Ruled(id(), next(), ZoneId.of("UTC"), controls));
    }

    /** The strips read so far of this list made a run, their samples taken after a clean or not. */
    Fact run(Optional<Instant> cleaned, Fact... strips) {
        return told(new Ran(
                id(),
                next(),
                Stream.of(strips)
                        .map(strip -> new RanStrip(strip.id(), cleaned))
                        .toList()));
    }

    List<OwedItem> items() {
        return OwedFold.of(facts);
    }

    List<OwedItem> shuffled(long seed) {
        List<Fact> mixed = new ArrayList<>(facts);
        Collections.shuffle(mixed, new Random(seed));
        return OwedFold.of(mixed);
    }

    OwedItem item(Fact because, Step... steps) {
        return items().stream()
                .filter(item -> item.owes().equals(because.id()))
                .filter(item -> List.of(steps).contains(item.step()))
                .findFirst()
                .orElseThrow();
    }

    List<Step> open() {
        return items().stream().filter(item -> !item.done()).map(OwedItem::step).toList();
    }
}
