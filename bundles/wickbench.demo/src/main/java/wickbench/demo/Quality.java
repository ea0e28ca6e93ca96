package wickbench.demo;

import java.util.List;
import java.util.stream.Stream;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/** What quality does with results: reviews them, decides on what is held, lets batches go. */
record Quality(
        Span span,
        Agenda agenda,
        HeldProduct held,
        ReviewRounds reviews,
        LineReleases releases,
        QualityMeeting meeting) {

    static Quality of(Plant plant, Span span, Agenda agenda, Doors doors) {
        PersonId who = plant.people().stream()
                .filter(worker -> worker.roles().containsAll(List.of(Role.REVIEWER, Role.RELEASER)))
                .map(Plant.Worker::id)
                .findFirst()
                .orElseThrow();
        StockEntries entries = new StockEntries(doors);
        LineBook book = new LineBook();
        HeldProduct held = new HeldProduct(plant, span, entries, who, book);
        LineReleases releases = new LineReleases(span, entries, who, book, held);
        return new Quality(
                span,
                agenda,
                held,
                new ReviewRounds(plant, span, agenda, entries, who),
                releases,
                new QualityMeeting(span, agenda, doors, who, held, releases));
    }

    void plan() {
        agenda.at(span.startOf(span.from()).plus(java.time.Duration.ofHours(13)), releases::plan);
        reviews.plan();
        meeting.plan();
    }

    /** Tells all of it as one chapter. */
    Told told() {
        return new Told(
                "held-product",
                Stream.of(held.told(), releases.told(), reviews.told())
                        .flatMap(told -> told.counts().stream())
                        .toList());
    }
}
