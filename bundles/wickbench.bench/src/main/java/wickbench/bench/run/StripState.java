package wickbench.bench.run;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.SecondReading;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;

/**
 * What has happened to one strip so far.
 *
 * @param preparation how its extract was shaken
 * @param undone the starts that were taken back
 * @param looked when the first line was answered
 * @param kept the answers of the first reader
 * @param second the answers of the second
 * @param alone nobody came for a second reading, or none was asked for
 * @param lost nobody looked at it before it was gone
 * @param recorded the reading's id in the journal
 */
public record StripState(
        RunStrip strip,
        Preparation preparation,
        Optional<Moment> started,
        List<Moment> undone,
        Optional<Moment> looked,
        Optional<Answers> kept,
        Optional<Answers> second,
        boolean alone,
        boolean lost,
        boolean skipped,
        Optional<UUID> recorded) {

    /** What one reader answered. */
    public record Answers(PersonId by, Map<LineRole, Seen> lines) {
        public Answers {
            lines = Map.copyOf(lines);
        }
    }

    /**
     * The shaking of the extract, as timed here.
     *
     * @param from when sample and liquid met and shaking began
     * @param lasted how long it was shaken, once it was ended
     */
    public record Preparation(Optional<Moment> from, Optional<Duration> lasted) {
        static final Preparation NONE = new Preparation(Optional.empty(), Optional.empty());

        /** Tells whether it is being shaken now. */
        public boolean underWay() {
            return from.isPresent() && lasted.isEmpty();
        }
    }

    static StripState of(RunStrip strip) {
        return new StripState(
                strip,
                Preparation.NONE,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                false,
                Optional.empty());
    }

    public int number() {
        return strip.number();
    }

    /** Returns where it stands. */
    public Phase phase(Moment now) {
        if (skipped) {
            return Phase.SKIPPED;
        }
        if (recorded.isPresent()) {
            return Phase.RECORDED;
        }
        if (kept.isPresent() || lost) {
            return secondWanted(now) ? Phase.SECOND : Phase.KEPT;
        }
        if (looked.isPresent()) {
            return Phase.LOOKING;
        }
        return started.isEmpty() ? Phase.WAITING : clock(now);
    }

    private Phase clock(Moment now) {
        Duration span = elapsed(now).orElseThrow().span();
        if (span.isNegative()) {
            // the wall was set back over a restart of the machine: nobody knows any more
            return Phase.MISSED;
        }
        if (span.compareTo(strip.develop()) < 0) {
            return Phase.DEVELOPING;
        }
        return span.compareTo(strip.closes()) <= 0 ? Phase.OPEN : Phase.MISSED;
    }

    /** Returns how long it has run. */
    public Optional<Moment.Elapsed> elapsed(Moment now) {
        return started.map(now::after);
    }

    /** Returns how long it is until the window opens, and then until it closes; negative once it has closed. */
    public Duration left(Moment now) {
        Duration span = elapsed(now).map(Moment.Elapsed::span).orElse(Duration.ZERO);
        Duration until = span.compareTo(strip.develop()) < 0 ? strip.develop() : strip.closes();
        return until.minus(span);
    }

    /** Tells whether its lines, as the first reader saw them, ask for a second: a faint test line, or drawn and negative. */
    public boolean asksForSecond() {
        return kept.map(Answers::lines).filter(this::asksForSecond).isPresent();
    }

    private boolean asksForSecond(Map<LineRole, Seen> lines) {
        boolean faint = lines.get(LineRole.TEST) == Seen.FAINT;
        boolean sandwich = strip.unread().strip().format().sandwich();
        boolean test =
                lines.get(LineRole.TEST) != null && lines.get(LineRole.TEST).there();
        boolean readable = lines.get(LineRole.CONTROL) != null
                && lines.get(LineRole.CONTROL).there()
                && !lines.containsValue(Seen.DAMAGED);
        boolean negative = readable && sandwich != test && lines.get(LineRole.HOOK) != Seen.NOT_SEEN;
        return faint || strip.drawn() && negative;
    }

    private boolean secondWanted(Moment now) {
        boolean inWindow = elapsed(now)
                .filter(time -> time.span().compareTo(strip.closes()) <= 0)
                .isPresent();
        return asksForSecond() && second.isEmpty() && !alone && inWindow;
    }

    /** Returns the reading as it stands: what nobody has answered is as in {@link RunStrip#unread}. */
    public Reading reading() {
        Reading unread = strip.unread();
        return new Reading(
                unread.sample(),
                unread.method(),
                unread.route(),
                unread.lot(),
                unread.operator(),
                unread.observer(),
                times(unread.times()),
                kept.map(answers -> strip(answers)).orElse(unread.strip()),
                second.map(answers -> new SecondReading(answers.by(), strip(answers))),
                unread.preChecks(),
                unread.origin());
    }

    private Strip strip(Answers answers) {
        return new Strip(strip.unread().strip().format(), answers.lines());
    }

    private Times times(Times known) {
        Optional<Instant> start = started.map(at -> at.wall().truncatedTo(ChronoUnit.MILLIS));
        // the time between the two is the true one, whatever the wall said meanwhile
        Optional<Instant> read = looked.flatMap(this::elapsed)
                .filter(span -> !span.span().isNegative())
                .flatMap(span -> start.map(at -> at.plusMillis(span.span().toMillis())));
        return new Times(
                known.outOfFridge(),
                known.extracted()
                        .or(() -> preparation.from().map(at -> at.wall().truncatedTo(ChronoUnit.MILLIS))),
                known.shaken().or(preparation::lasted),
                start,
                read);
    }
}
