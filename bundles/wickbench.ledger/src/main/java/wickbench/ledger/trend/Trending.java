package wickbench.ledger.trend;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Passphrase;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;
import wickbench.figures.sums.Answer;
import wickbench.ledger.Filter;

/**
 * Trends over the first tests after a clean; reads the index, so never on the screen's thread.
 *
 * <p>Counted is, of each point by each method, the first strip for a batch (where none is named: of a day) that was taken after a
 * changeover or a clean. So no re-test, no repeat, no dilution, no run control, no check of a lot and no strip of a blind round is
 * among them. Positives are counted of the first valid strips, Invalids of the first strips.
 */
@ProviderType
public interface Trending {

    /** How many strips are listed behind a mark. */
    int MOST_BEHIND = 300;

    /** What is counted. */
    enum Events implements Coded {
        POSITIVE,
        INVALID
    }

    /** By which chart. */
    enum Kind implements Coded {
        /** Shares by week. */
        P,
        /** Shares by week, with limits as wide as the weeks differ. */
        P_PRIME,
        /** Counts by week, where as many are tested each week. */
        C,
        /** Good strips between two events. */
        G,
        /** Days between two events. */
        T,
        /** What shares by week add up to. */
        CUSUM,
        /** A moving average of shares by week. */
        EWMA;

        /** Tells whether a point of the chart is a week; else it is an event. */
        public boolean byWeek() {
            return this != G && this != T;
        }
    }

    /** Which trend; of the filter days, place, line, method and target count. */
    record Asked(Filter filter, Events events, Kind kind) {}

    /** What there was somewhere in a week. */
    record Cell(String place, String line, LocalDate monday, long strips, long events) {}

    /**
     * A point of the chart.
     *
     * @param monday where it is a week
     * @param result where it is an event: the id of the result
     */
    record Mark(String name, long strips, long events, Optional<LocalDate> monday, Optional<UUID> result) {}

    /** A point, line, method or target with all that was counted there, the highest share first. */
    record Rank(String name, long strips, long events) {
        public double share() {
            return strips == 0 ? 0 : (double) events / strips;
        }
    }

    /**
     * A trend.
     *
     * @param marks what each point of the chart is, in its order: a week, or an event
     * @param base over what the limits are frozen; empty while they follow the points themselves
     * @param answer the chart with its signals; empty where there is too little
     * @param lacking why there is no chart; empty where there is one
     * @param cells points by weeks
     */
    record Trend(
            Asked asked,
            List<Mark> marks,
            Optional<TrendBase> base,
            Optional<Answer> answer,
            Optional<String> lacking,
            List<Rank> points,
            List<Rank> lines,
            List<Rank> methods,
            List<Rank> targets,
            List<Cell> cells) {
        public Trend {
            marks = List.copyOf(marks);
            points = List.copyOf(points);
            lines = List.copyOf(lines);
            methods = List.copyOf(methods);
            targets = List.copyOf(targets);
            cells = List.copyOf(cells);
        }

        /** Returns what the chart signals; nothing where there is none. */
        public List<TrendSignal> signals() {
            return answer.map(done -> TrendSignal.of(done, asked.kind())).orElse(List.of());
        }
    }

    /** A first test after a clean, as it was counted. */
    record Behind(UUID result, Instant at, String sample, String place, Outcome outcome, boolean event) {}

    Trend of(Asked asked);

    /**
     * Returns the strips that were counted, in the order of time, at most {@value #MOST_BEHIND}.
     *
     * @param monday only of this week
     * @param place only of this point
     */
    List<Behind> behind(Asked asked, Optional<LocalDate> monday, Optional<String> place);

    /**
     * Freezes the limits of a trend over a period, until the next entry says otherwise.
     *
     * @param by a reviewer
     * @throws wickbench.api.check.Refusal {@code trend.nothing} when nothing was tested in it, or as
     *     {@link wickbench.api.authority.Authority} says
     */
    EntryRef base(TrendBase base, PersonId by, Optional<Passphrase> passphrase);
}
