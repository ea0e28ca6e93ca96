package wickbench.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.owed.OwedItem;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;

/** Batches that follow hazelnut on line 2: what they must have shown was planned, and who read none of it lets them go. */
final class LineReleases {
    private static final String LINE = StubbornChangeover.LINE;
    private static final MethodId METHOD = new MethodId("hazelnut-swab-dry");
    private static final List<String> POINTS =
            List.of("L2 scraper arm", "L2 pump seal", "L2 transfer valve", "L2 depositor nozzles");

    private static final Duration LOOKED_BACK = Duration.ofDays(21);

    private final Span span;
    private final StockEntries entries;
    private final PersonId releaser;
    private final LineBook book;
    private final HeldProduct held;
    private final Set<String> released = new HashSet<>();

    LineReleases(Span span, StockEntries entries, PersonId releaser, LineBook book, HeldProduct held) {
        this.span = span;
        this.entries = entries;
        this.releaser = releaser;
        this.book = book;
        this.held = held;
    }

    void plan() {
        entries.write(
                releaser,
                "release.planned",
                Json.object()
                        .with("line", LINE)
                        .with(
                                "points",
                                Json.array(POINTS.stream()
                                        .map(point -> Json.object()
                                                .with("place", point)
                                                .with("method", METHOD.value()))
                                        .toList()))
                        .with(
                                "reason",
                                "The four points at which hazelnut stays longest, by the site's risk assessment."));
    }

    /** Lets go what may go by now; asks for what is open only where nothing else speaks against a batch. */
    void release(Supplier<List<OwedItem>> owed) {
        Instant since = entries.now().minus(LOOKED_BACK);
        Map<String, List<UUID>> ready = new LinkedHashMap<>();
        book.ofLine(LINE)
                .filter(strip -> strip.at().isAfter(since) && strip.because(Reason.CHANGEOVER))
                .filter(strip -> strip.recorded().reading().method().equals(METHOD))
                .flatMap(strip -> strip.sample().batch().stream())
                .distinct()
                .filter(batch -> !released.contains(batch))
                .forEach(batch -> rests(batch).ifPresent(rests -> ready.put(batch, rests)));
        if (!ready.isEmpty()) {
            List<OwedItem> open = owed.get();
            ready.forEach((batch, rests) -> {
                if (!isOwed(batch, open)) {
                    release(batch, rests);
                }
            });
        }
    }

    private boolean isOwed(String batch, List<OwedItem> open) {
        List<LineBook.Strip> of = book.ofBatch(batch).toList();
        List<UUID> ids = of.stream().map(LineBook.Strip::id).toList();
        Instant tested = newest(of);
        return open.stream()
                .anyMatch(item ->
                        POINTS.contains(item.place()) && !item.since().isAfter(tested) || ids.contains(item.owes()));
    }

    private void release(String batch, List<UUID> rests) {
        released.add(batch);
        entries.write(
                releaser,
                "release.recorded",
                Json.object()
                        .with("sort", "batch")
                        .with("name", batch)
                        .with(
                                "rests",
                                Json.texts(rests.stream().map(UUID::toString).toList()))
                        .with("reason", "All planned points are Negative, the controls were good, nothing is held."));
    }

    /** Returns the Negatives on which a batch rests; empty while it may not go. */
    private Optional<List<UUID>> rests(String batch) {
        List<LineBook.Strip> of = book.ofBatch(batch).toList();
        boolean undecided = book.holds(LINE).anyMatch(strip -> !held.isDecided(strip.id()) && !settled(strip, of));
        List<UUID> rests = new ArrayList<>();
        for (String point : POINTS) {
            newest(of, point)
                    .filter(LineBook.Strip::good)
                    .filter(this::controlled)
                    .ifPresent(strip -> rests.add(strip.id()));
        }
        return undecided || rests.size() < POINTS.size() ? Optional.empty() : Optional.of(rests);
    }

    /** What was held long after a batch was made is no matter of it. */
    private static boolean settled(LineBook.Strip strip, List<LineBook.Strip> of) {
        return newest(of).isBefore(strip.at());
    }

    private static Instant newest(List<LineBook.Strip> of) {
        return of.stream()
                .map(LineBook.Strip::at)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Optional<LineBook.Strip> newest(List<LineBook.Strip> of, String point) {
        return of.stream()
                .filter(strip -> strip.sample().place().equals(point)
                        && strip.recorded().reading().method().equals(METHOD))
                .filter(strip -> strip.sample().control().isEmpty()
                        && strip.sample().dilution().compareTo(BigDecimal.ONE) == 0)
                .max(Comparator.comparing(LineBook.Strip::at));
    }

    private boolean controlled(LineBook.Strip strip) {
        return newest(strip, RunControl.LOW_POSITIVE)
                        .filter(control ->
                                control.recorded().verdict().outcome().positive())
                        .isPresent()
                && newest(strip, RunControl.BLANK)
                        .filter(control -> control.recorded().verdict().outcome() != Outcome.NEGATIVE)
                        .isEmpty();
    }

    private Optional<LineBook.Strip> newest(LineBook.Strip like, RunControl sort) {
        LocalDate day = span.dayOf(like.at());
        return book.ofLot(like.recorded().reading().lot())
                .filter(other -> other.sample().control().equals(Optional.of(sort)) && other.sameMethod(like))
                .filter(other -> span.dayOf(other.at()).equals(day))
                .max(Comparator.comparing(LineBook.Strip::at));
    }

    Told told() {
        return new Told("releases", List.of(new Told.Count("released", released.size())));
    }
}
