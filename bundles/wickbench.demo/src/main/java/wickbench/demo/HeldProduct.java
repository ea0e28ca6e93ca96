package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import wickbench.api.json.Json;
import wickbench.api.owed.Neighbourhood;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Settled;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;

/**
 * What becomes of product that is held: the point is cleaned again, it and its neighbours are sampled again, and a releaser who
 * read none of it says why it came about and lets it go.
 *
 * <p>Written as {@code docs/formats} says, so that the ledger need not be installed where a demonstration is made.
 */
final class HeldProduct implements Chapter {
    private static final Duration BEFORE_SAMPLING = Duration.ofMinutes(2);

    private final Plant plant;
    private final Span span;
    private final StockEntries entries;
    private final PersonId releaser;
    private final LineBook book;
    private final Map<String, Set<String>> soiled = new HashMap<>();
    private final Set<UUID> decided = new HashSet<>();

    HeldProduct(Plant plant, Span span, StockEntries entries, PersonId releaser, LineBook book) {
        this.plant = plant;
        this.span = span;
        this.entries = entries;
        this.releaser = releaser;
        this.book = book;
    }

    @Override
    public void hear(RecordedReading recorded) {
        throw new IllegalStateException("a strip is known by its entry here");
    }

    @Override
    public void hear(UUID id, RecordedReading recorded) {
        book.hear(id, recorded);
        book.strip(id).ifPresent(this::heard);
    }

    private void heard(LineBook.Strip strip) {
        if (strip.because(Reason.CHANGEOVER)) {
            cleaned(strip);
        }
        if (strip.recorded().verdict().owed().contains(Owed.RE_TEST)) {
            List<String> neighbours = neighbours(strip);
            entries.write(
                    strip.recorded().reading().operator(),
                    Neighbourhood.KIND,
                    Json.object().with("reading", strip.id().toString()).with("points", Json.texts(neighbours)));
            if (strip.because(Reason.BEFORE_CLEANING)) {
                soiled.computeIfAbsent(strip.line(), none -> new TreeSet<>())
                        .add(strip.sample().place());
            }
        }
    }

    /** Who samples after a changeover writes down when the clean of it had ended. */
    private void cleaned(LineBook.Strip sampled) {
        Optional<Set<String>> places = Optional.ofNullable(soiled.remove(sampled.line()));
        Instant ended = sampled.recorded()
                .reading()
                .times()
                .extracted()
                .orElse(sampled.at())
                .minus(BEFORE_SAMPLING);
        PersonId by = sampled.recorded().reading().operator();
        places.ifPresent(all -> all.forEach(place -> entries.write(
                by,
                "clean.recorded",
                Json.object()
                        .with("place", place)
                        .with("line", sampled.line())
                        .with("procedure", sampled.sample().reasonText().orElse("changeover clean"))
                        .with("by", by.value())
                        .with("ended", StockEntries.time(ended)))));
    }

    private List<String> neighbours(LineBook.Strip strip) {
        List<String> places = plant.lines().stream()
                .filter(line -> line.id().equals(strip.line()))
                .flatMap(line -> line.points().stream())
                .filter(point ->
                        point.methods().contains(strip.recorded().reading().method()))
                .map(Plant.Point::name)
                .toList();
        int at = places.indexOf(strip.sample().place());
        return places.stream()
                .filter(place -> at >= 0 && Math.abs(places.indexOf(place) - at) == 1)
                .toList();
    }

    /**
     * Decides on what a strip holds; writes nothing while its points were not all Negative again.
     *
     * @param owed what it owes or owed
     */
    void decide(UUID id, List<OwedItem> owed) {
        List<OwedItem> reTests =
                owed.stream().filter(item -> item.step() == Step.RE_TEST).toList();
        if (reTests.stream().allMatch(OwedItem::done)) {
            Optional<Instant> until = reTests.stream()
                    .flatMap(item -> item.answers().stream())
                    .flatMap(answer -> book.strip(answer).stream())
                    .map(LineBook.Strip::at)
                    .max(Instant::compareTo);
            book.strip(id)
                    .filter(strip -> !StubbornChangeover.isLeft(strip, span))
                    .ifPresent(strip -> decide(strip, until.orElseGet(entries::now)));
        }
    }

    private void decide(LineBook.Strip strip, Instant until) {
        Optional<LineBook.Strip> good = book.lastGood(strip);
        Set<String> products = book.made(strip, good.map(LineBook.Strip::at), until);
        if (strip.food()) {
            decided(
                    strip,
                    "relabel",
                    products,
                    good,
                    "The label declares it; no other product went out under the old one.");
            decided(strip, "done", products, good, "Relabelled, and counted by two.");
        } else {
            decided(
                    strip,
                    "release",
                    products,
                    good,
                    "Cleaned again; the point and its neighbours were sampled anew: not detected.");
        }
        entries.later(
                releaser,
                Settled.KIND,
                new Settled(strip.id(), Owed.HOLD, "Decided on with its product.", List.of()).body());
        decided.add(strip.id());
    }

    private void decided(
            LineBook.Strip strip, String move, Set<String> products, Optional<LineBook.Strip> good, String reason) {
        entries.later(
                releaser,
                "action.decided",
                Json.object()
                        .with("result", strip.id().toString())
                        .with("move", move)
                        .with("products", Json.texts(List.copyOf(products)))
                        .with("reason", reason)
                        .with("cause", cause(strip))
                        .withOptional(
                                "last_good",
                                good.map(last -> Json.object()
                                        .with("result", last.id().toString())
                                        .with("at", StockEntries.time(last.at())))));
    }

    private static String cause(LineBook.Strip strip) {
        if (StubbornChangeover.PLACES.contains(strip.sample().place())) {
            return "The part is not taken apart at a changeover, and the procedure does not reach behind its seal.";
        }
        return strip.because(Reason.BEFORE_CLEANING)
                ? "Sampled on purpose before the clean, to see what it has to cope with."
                : "Residue in a joint that was not opened at the clean; shown to the shift.";
    }

    /** Writes what was decided, at once. */
    void flush() {
        entries.flush();
    }

    boolean isDecided(UUID id) {
        return decided.contains(id);
    }

    @Override
    public Told told() {
        return new Told("held-product", List.of(new Told.Count("decided", decided.size())));
    }
}
