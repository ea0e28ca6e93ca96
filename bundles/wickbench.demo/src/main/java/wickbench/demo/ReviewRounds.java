package wickbench.demo;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;

/** Each working morning somebody who read none of them looks over the strips of the days before, and signs them off as one. */
final class ReviewRounds {
    private static final LocalTime BEGINS = LocalTime.of(9, 20);
    /** The last days wait, as they do on any morning. */
    private static final int LEFT_DAYS = 3;

    private final Plant plant;
    private final Span span;
    private final Agenda agenda;
    private final StockEntries entries;
    private final PersonId reviewer;
    private final List<Waiting> waiting = new ArrayList<>();
    private int reviewed;

    ReviewRounds(Plant plant, Span span, Agenda agenda, StockEntries entries, PersonId reviewer) {
        this.plant = plant;
        this.span = span;
        this.agenda = agenda;
        this.entries = entries;
        this.reviewer = reviewer;
    }

    /** A strip that nobody has reviewed. */
    private record Waiting(UUID id, Instant recorded) {}

    void hear(UUID id, RecordedReading recorded) {
        Reading reading = recorded.reading();
        boolean own = reading.operator().equals(reviewer)
                || reading.observer().filter(reviewer::equals).isPresent()
                || reading.second()
                        .filter(second -> second.reader().equals(reviewer))
                        .isPresent();
        if (!own) {
            waiting.add(new Waiting(id, entries.now()));
        }
    }

    void plan() {
        span.days().stream()
                .filter(day -> day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0 && plant.works(day))
                .forEach(day -> agenda.at(day.atTime(BEGINS).atZone(span.zone()).toInstant(), () -> review(day)));
    }

    private void review(LocalDate day) {
        Instant before = span.startOf(day);
        boolean leave = day.isAfter(span.until().minusDays(LEFT_DAYS));
        List<Waiting> due = leave
                ? List.of()
                : waiting.stream()
                        .filter(each -> each.recorded().isBefore(before))
                        .toList();
        if (!due.isEmpty()) {
            entries.write(
                    reviewer,
                    "reading.reviewed",
                    Json.object()
                            .with(
                                    "statements",
                                    Json.texts(due.stream()
                                            .map(each -> each.id().toString())
                                            .toList())));
            waiting.removeAll(due);
            reviewed += due.size();
        }
    }

    Told told() {
        return new Told(
                "reviews", List.of(new Told.Count("reviewed", reviewed), new Told.Count("waiting", waiting.size())));
    }
}
