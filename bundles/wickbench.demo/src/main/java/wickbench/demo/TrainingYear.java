package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.owed.Settled;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;

/**
 * The year of the training book: everybody authorised, a blind round every few months, and the operator who overlooks faint lines:
 * passed as long as no round held any, failed by the first that did, suspended, watched, drilled and restored.
 */
final class TrainingYear implements Chapter {
    private static final LocalTime OPENS = LocalTime.of(5, 12);
    private static final LocalTime AFTER_THE_SHIFT = LocalTime.of(22, 20);
    private static final int SPARE_DAYS = 21;
    private static final int DAYS_APART = 9;
    private static final int OVERLOOKED = 6;
    private static final double ONE_MISSED = 0.2;
    private static final Duration DOUBTED = Duration.ofDays(21);

    private final Plant plant;
    private final Span span;
    private final Agenda agenda;
    private final StockEntries entries;
    private final Random random;
    private final PersonId trainer;
    private final PersonId reader;
    private final Map<UUID, Instant> read = new LinkedHashMap<>();
    private int authorised;
    private int rounds;
    private int decided;

    TrainingYear(Plant plant, Span span, Agenda agenda, Doors doors, long seed) {
        this.plant = plant;
        this.span = span;
        this.agenda = agenda;
        this.entries = new StockEntries(doors);
        this.random = new Random(seed ^ 0x7261696eL);
        this.trainer = plant.people().stream()
                .filter(worker -> worker.roles().contains(Role.TRAINER))
                .map(Plant.Worker::id)
                .findFirst()
                .orElseThrow();
        this.reader = FaintLineReader.who(plant);
    }

    void plan() {
        agenda.at(at(span.from(), OPENS), this::open);
        agenda.at(at(StubbornChangeover.changes(span), OPENS), this::acknowledge);
        // no faint line among them, so nobody learns that one reader overlooks those
        plan(2, new BlindRound("round-1", 6, 0, 4, 2, 2), 0);
        plan(5, new BlindRound("round-2", 6, 0, 4, 2, 2), 0);
        LocalDate failed = FaintLineReader.suspendedOn(span).minusDays(1);
        agenda.at(at(failed, AFTER_THE_SHIFT), () -> round(new BlindRound("round-3", 6, 10, 3, 1, 2), OVERLOOKED));
        LocalDate again = FaintLineReader.restoredOn(span).minusDays(1);
        agenda.at(at(again, AFTER_THE_SHIFT), () -> round(new BlindRound("round-4", 6, 10, 3, 1, 2), 1));
        plan(11, new BlindRound("round-5", 6, 10, 3, 1, 2), 0);
    }

    private void plan(int twelfth, BlindRound round, int missed) {
        agenda.at(at(span.after(twelfth), AFTER_THE_SHIFT), () -> round(round, missed));
    }

    private Instant at(LocalDate day, LocalTime time) {
        return day.atTime(time).atZone(span.zone()).toInstant();
    }

    private void open() {
        later(
                trainer,
                "training.terms-set",
                Json.object().with("months", 14).with("untested_weeks", 40).with("remind_days", 30));
        later(
                trainer,
                "training.light-measured",
                Json.object().with("bench", "Line laboratory").with("lux", 820));
        for (PersonId operator : plant.operators()) {
            later(
                    trainer,
                    "training.sight-tested",
                    Json.object()
                            .with("person", operator.value())
                            .with(
                                    "vision",
                                    operator.equals(plant.operators().get(3)) ? "deficient-qualified" : "normal")
                            .with("how", "Colour plates at the bench light of the line laboratory."));
            plant.methods().forEach(method -> authorise(operator, method));
        }
        entries.flush();
    }

    /** Terms end one operator after the other, so that somebody is always due next. */
    private void authorise(PersonId operator, MethodId method) {
        int turn = plant.operators().indexOf(operator);
        LocalDate until = span.until().plusDays(SPARE_DAYS + (long) DAYS_APART * turn);
        later(
                trainer,
                "training.authorised",
                Json.object()
                        .with("person", operator.value())
                        .with("method", method.value())
                        .with("until", until.toString())
                        .with("version", 1)
                        .with("reason", "Observed test without a prompt, questions answered."));
        authorised++;
    }

    /** Everybody reads the new edition before the first shift. */
    private void acknowledge() {
        String method = DemoFiles.secondEdition().ref().id().value();
        plant.operators()
                .forEach(operator -> later(
                        operator,
                        "training.acknowledged",
                        Json.object()
                                .with("person", operator.value())
                                .with("method", method)
                                .with("version", 2)));
        entries.flush();
    }

    private void round(BlindRound round, int missedByReader) {
        rounds++;
        List<PersonId> readers = plant.operators();
        BlindRound.Drawn drawn = round.drawn(random);
        Instant now = entries.now();
        entries.write(trainer, "round.opened", round.opened(now, readers, drawn));
        Map<PersonId, Integer> missed = new LinkedHashMap<>();
        for (int i = 0; i < readers.size(); i++) {
            PersonId each = readers.get(i);
            int usual = round.near() > 0 && random.nextDouble() < ONE_MISSED ? 1 : 0;
            missed.put(each, each.equals(reader) ? missedByReader : usual);
            Instant called = now.plus(Duration.ofMinutes(20 + 2L * i));
            agenda.at(
                    called,
                    () -> entries.write(
                            trainer, "round.called", round.called(entries.now(), each, drawn, missed.get(each))));
        }
        agenda.at(
                now.plus(Duration.ofMinutes(50)),
                () -> entries.write(trainer, "round.closed", round.closed(entries.now(), drawn)));
        agenda.at(now.plus(Duration.ofMinutes(55)), () -> score(round, missed));
    }

    private void score(BlindRound round, Map<PersonId, Integer> missed) {
        UUID score = entries.write(trainer, "round.scored", new RoundScores(round).scored(entries.now(), missed))
                .id();
        missed.keySet()
                .forEach(each -> later(
                        each,
                        "training.seen",
                        Json.object().with("person", each.value()).with("about", score.toString())));
        entries.flush();
        if (!RoundScores.passed(missed.get(reader))) {
            suspend();
        }
    }

    private void suspend() {
        Instant now = entries.now();
        Instant since = now.minus(DOUBTED);
        Doubt doubt = new Doubt(
                "operator.suspended",
                Optional.empty(),
                Optional.empty(),
                Optional.of(reader),
                Optional.of(since),
                Optional.of(now));
        UUID suspended = entries.write(
                        trainer,
                        "training.suspended",
                        Doubt.into(
                                Json.object()
                                        .with("person", reader.value())
                                        .with("at", StockEntries.time(now))
                                        .with("since", StockEntries.time(since))
                                        .with("reason", "Overlooked 6 of 10 faint lines in a blind round."),
                                List.of(doubt)))
                .id();
        List<UUID> touched = read.entrySet().stream()
                .filter(each -> !each.getValue().isBefore(since))
                .map(Map.Entry::getKey)
                .toList();
        decided = touched.size();
        if (decided > 0) {
            agenda.at(now.plus(Duration.ofMinutes(35)), () -> decide(suspended, touched));
        }
        agenda.at(at(FaintLineReader.restoredOn(span), LocalTime.of(0, 2)), () -> restore(suspended));
    }

    /** A reviewer looks at what was made since, strip by strip. */
    private void decide(UUID suspended, List<UUID> touched) {
        Settled settled = new Settled(
                suspended,
                Owed.DECIDE,
                "Second readers, re-tests and first-off products of those weeks looked at one by one; none stands alone.",
                touched);
        entries.write(trainer, Settled.KIND, settled.body());
    }

    private void restore(UUID suspended) {
        for (MethodId method : plant.methods()) {
            int version = method.equals(DemoFiles.secondEdition().ref().id()) ? 2 : 1;
            Json.Obj body = Json.object()
                    .with("person", reader.value())
                    .with("method", method.value())
                    .with("at", StockEntries.time(entries.now()))
                    .with("until", span.until().plusDays(SPARE_DAYS / 2).toString())
                    .with("version", version)
                    .with("reason", "Four weeks of the faint-line drill under an observer, then a blind round passed.")
                    .with("suspensions", Json.texts(List.of(suspended.toString())));
            entries.later(trainer, "training.restored", new Trust(List.of(suspended), entries.now()).into(body));
        }
        entries.flush();
    }

    private void later(PersonId by, String kind, Json.Obj facts) {
        entries.later(by, kind, facts.with("at", StockEntries.time(entries.now())));
    }

    @Override
    public void hear(RecordedReading recorded) {
        // nothing without its entry
    }

    @Override
    public void hear(UUID entry, RecordedReading recorded) {
        Reading reading = recorded.reading();
        boolean negative = recorded.verdict().outcome() == Outcome.NEGATIVE
                && reading.sample().control().isEmpty();
        if (negative && reading.operator().equals(reader)) {
            reading.times().started().ifPresent(started -> read.put(entry, started));
        }
    }

    @Override
    public Told told() {
        List<Told.Count> counts = new ArrayList<>(Stream.of(
                        new Told.Count("authorisations", authorised),
                        new Told.Count("rounds", rounds),
                        new Told.Count("decided", decided))
                .toList());
        return new Told("training-year", counts);
    }
}
