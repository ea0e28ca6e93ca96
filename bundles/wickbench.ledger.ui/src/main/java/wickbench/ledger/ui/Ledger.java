package wickbench.ledger.ui;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.chart.ChartPainter;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.Results;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.papers.Papers;

/**
 * What the page reads from; none of it on the UI thread.
 *
 * @param people one, or none where people are not kept
 * @param painters one, or none where charts cannot be drawn
 */
record Ledger(
        Results results,
        Journal journal,
        SiteFacts facts,
        List<People> people,
        List<ChartPainter> painters,
        Papers papers,
        Packing packing) {
    /**
     * What holds for every result that is shown.
     *
     * @param any how many results there are, whatever the filter
     */
    record Known(Site site, WhoIsWho people, long any) {}

    /**
     * A result with the newest checkpoint.
     *
     * @param checkpoint of this station
     */
    record Shown(ResultDetail detail, Optional<Checkpoint> checkpoint) {}

    Known known() {
        Map<PersonId, String> names = new HashMap<>();
        people.forEach(port -> port.all().forEach(person -> names.put(person.id(), person.display())));
        return new Known(facts.now(), new WhoIsWho(names), results.count(Filter.ALL));
    }

    /** Finds a result by the id of an entry or by its place in the journal; what is neither names no result. */
    Optional<Shown> find(String argument) {
        try {
            return argument.contains(":")
                    ? results.find(EntryRef.parse(argument)).map(this::sealed)
                    : results.find(UUID.fromString(argument)).map(this::sealed);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Shown sealed(ResultDetail detail) {
        return new Shown(detail, journal.status().checkpoint());
    }
}
