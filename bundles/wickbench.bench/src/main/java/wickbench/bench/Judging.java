package wickbench.bench;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.gate.Question;
import wickbench.api.method.Method;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Verdict;
import wickbench.reading.RunJudgement;

/** Judges a run: finds each strip's method, asks the neighbours as of its start, and lets the core decide. */
final class Judging {
    static final String NOT_IN_FORCE = "method.not-in-force";

    private final Neighbours neighbours;
    private final InstantSource clock;
    private final ControlBook controls;

    Judging(Neighbours neighbours, InstantSource clock, ControlBook controls) {
        this.neighbours = neighbours;
        this.clock = clock;
        this.controls = controls;
    }

    /**
     * Judges the strips of one run.
     *
     * @throws BadInput when a method is not known, or does not fit the strip or the route
     */
    List<RecordedReading> judge(List<Reading> run, MethodSource methods, InForce inForce) {
        List<RunJudgement.Unjudged> unjudged =
                run.stream().map(reading -> unjudged(reading, methods)).toList();
        List<Verdict> verdicts = RunJudgement.judge(unjudged, this::shadowed);
        List<RecordedReading> judged = new ArrayList<>();
        for (int i = 0; i < run.size(); i++) {
            RunJudgement.Unjudged strip = unjudged.get(i);
            Verdict verdict =
                    inForce.holds(strip.method(), strip.reading().times().started())
                            ? verdicts.get(i)
                            : cautioned(verdicts.get(i), strip);
            judged.add(new RecordedReading(strip.reading(), strip.method(), strip.answers(), verdict));
        }
        return judged;
    }

    /** Tells whether a method was in force when a strip was started. */
    @FunctionalInterface
    interface InForce {
        boolean holds(Method method, Optional<Instant> start);
    }

    private RunJudgement.Unjudged unjudged(Reading reading, MethodSource methods) {
        Method method = methods.find(reading.method(), reading.times().started())
                .orElseThrow(() -> refused(reading, BenchWords.get("method.unknown", reading.method())));
        if (method.format() != reading.strip().format()) {
            throw refused(
                    reading,
                    BenchWords.get(
                            "format.other", reading.method(), method.format().code()));
        }
        if (method.route() != reading.route()) {
            throw refused(
                    reading,
                    BenchWords.get(
                            "route.other",
                            reading.method(),
                            method.route().code(),
                            reading.route().code()));
        }
        return new RunJudgement.Unjudged(method, reading, neighbours.ask(question(reading, method)));
    }

    private boolean shadowed(RunJudgement.Unjudged strip) {
        Reading reading = strip.reading();
        return controls.failedBefore(reading.method(), reading.lot(), at(reading));
    }

    private Instant at(Reading reading) {
        return reading.times().started().or(reading.times()::read).orElseGet(clock::instant);
    }

    private Question question(Reading reading, Method method) {
        return new Question(
                method.ref(),
                reading.route(),
                reading.lot(),
                reading.operator(),
                reading.observer(),
                reading.sample().reason().filter(why -> why == Reason.LOT_CHECK).isPresent(),
                at(reading),
                Optional.of(reading.sample().place()));
    }

    private static BadInput refused(Reading reading, String text) {
        return new BadInput(Complaint.of(reading.sample().code(), "method", text));
    }

    private static Verdict cautioned(Verdict verdict, RunJudgement.Unjudged strip) {
        List<Finding> findings = new ArrayList<>(verdict.findings());
        String started =
                strip.reading().times().started().map(Instant::toString).orElse("");
        findings.add(new Finding(
                NOT_IN_FORCE, Severity.CAUTION, started, strip.method().ref().toString()));
        return new Verdict(
                verdict.outcome(), verdict.sign(), findings, verdict.level(), verdict.owed(), verdict.method());
    }

    /** Returns methods by id from files, where the version does not matter. */
    static MethodSource ofFiles(Map<wickbench.api.method.MethodId, Method> files, MethodSource otherwise) {
        return (id, start) -> Optional.ofNullable(files.get(id)).or(() -> otherwise.find(id, start));
    }
}
