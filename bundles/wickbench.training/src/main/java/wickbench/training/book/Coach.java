package wickbench.training.book;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.words.Decimals;
import wickbench.training.BenchLight;
import wickbench.training.Competence;
import wickbench.training.CompetenceMove;
import wickbench.training.Observation;
import wickbench.training.Paper;
import wickbench.training.Questions;
import wickbench.training.Sight;
import wickbench.training.Terms;
import wickbench.training.Training;

/** Does what is done about competence, each act after a look at what it rests on. */
@Component
public final class Coach implements Training {
    /** Why results of a suspended operator are in doubt. */
    private static final String DOUBT = "operator.suspended";

    private final Book book;
    private final Pen pen;
    private final Papers papers;

    @Activate
    public Coach(@Reference Book book, @Reference Pen pen) {
        this.book = book;
        this.pen = pen;
        this.papers = new Papers(book, pen);
    }

    @Override
    public synchronized Terms terms(Terms terms, Actor by) {
        pen.write(Act.KEEP_TRAINING, Kinds.TERMS, Bodies.terms(terms, book.now()), by);
        return terms;
    }

    @Override
    public synchronized Competence authorise(
            PersonId person, MethodId method, Optional<LocalDate> until, String reason, Actor by) {
        Competence now = allowed(person, method, CompetenceMove.AUTHORISE, by);
        pen.write(Act.AUTHORISE_OPERATOR, Kinds.AUTHORISED, decision(now, until, reason), by);
        return book.competence(person, method, book.now());
    }

    @Override
    public synchronized Competence restore(
            PersonId person, MethodId method, Optional<LocalDate> until, String reason, Actor by) {
        Competence now = allowed(person, method, CompetenceMove.RESTORE, by);
        Json.Obj body = decision(now, until, reason)
                .with(
                        "suspensions",
                        Json.texts(
                                now.suspensions().stream().map(UUID::toString).toList()));
        pen.write(Act.AUTHORISE_OPERATOR, Kinds.RESTORED, new Trust(now.suspensions(), book.now()).into(body), by);
        return book.competence(person, method, book.now());
    }

    private Competence allowed(PersonId person, MethodId method, CompetenceMove move, Actor by) {
        if (person.equals(by.who())) {
            throw Said.refused("training.own", person);
        }
        Competence now = book.competence(person, method, book.now());
        if (move.from(now.state()).isEmpty()) {
            throw refused(now, move);
        }
        return now;
    }

    private static RuntimeException refused(Competence now, CompetenceMove move) {
        return Said.refused(
                "training.move",
                now.person(),
                now.method(),
                TrainingWords.get("state." + now.state().code()),
                TrainingWords.get("move." + move.code()));
    }

    private Json.Obj decision(Competence now, Optional<LocalDate> until, String reason) {
        LocalDate today = LocalDate.ofInstant(book.now(), book.zone());
        LocalDate last = until.orElseGet(() -> book.terms(book.now()).lastDay(today));
        if (last.isBefore(today)) {
            throw Said.wrong("until", "until.past", today, last);
        }
        Json.Obj body = Json.object()
                .with("person", now.person().value())
                .with("method", now.method().value())
                .with("at", Bodies.time(book.now()))
                .with("until", last.toString())
                .with("reason", Said.reason(reason));
        return now.version().map(version -> body.with("version", version)).orElse(body);
    }

    @Override
    public synchronized void suspend(
            PersonId person, Optional<MethodId> method, Optional<Instant> since, String reason, Actor by) {
        Instant now = book.now();
        Instant from = since.orElse(now);
        if (from.isAfter(now)) {
            throw Said.wrong("since", "time.ahead", from);
        }
        method.map(each -> book.competence(person, each, now))
                .filter(each -> CompetenceMove.SUSPEND.from(each.state()).isEmpty())
                .ifPresent(each -> {
                    throw refused(each, CompetenceMove.SUSPEND);
                });
        if (method.isEmpty() && nothingToSuspend(person, now)) {
            throw Said.refused("suspend.nothing", person);
        }
        Json.Obj body = Json.object()
                .with("person", person.value())
                .withText("method", method.map(MethodId::value))
                .with("at", Bodies.time(now))
                .with("since", Bodies.time(from))
                .with("reason", Said.reason(reason));
        pen.write(Act.SUSPEND_OPERATOR, Kinds.SUSPENDED, Doubt.into(body, List.of(doubt(person, method, from))), by);
    }

    /** Whoever keeps results opens a decision on each Negative that they read since then. */
    private static Doubt doubt(PersonId person, Optional<MethodId> method, Instant from) {
        return new Doubt(DOUBT, Optional.empty(), method, Optional.of(person), Optional.of(from), Optional.empty());
    }

    private boolean nothingToSuspend(PersonId person, Instant now) {
        return book.methods(now).stream()
                .map(method -> book.competence(person, method, now))
                .noneMatch(each -> CompetenceMove.SUSPEND.from(each.state()).isPresent());
    }

    @Override
    public synchronized Competence acknowledge(MethodId method, Actor by) {
        Competence now = book.competence(by.who(), method, book.now());
        int version = now.version().orElseThrow(() -> Said.refused("acknowledge.none", method));
        if (version <= now.read()) {
            throw Said.refused("acknowledge.already", by.who(), method, version);
        }
        Json.Obj body = Json.object()
                .with("person", by.who().value())
                .with("method", method.value())
                .with("version", version)
                .with("at", Bodies.time(book.now()));
        pen.write(Act.ACKNOWLEDGE, Kinds.ACKNOWLEDGED, body, by);
        return book.competence(by.who(), method, book.now());
    }

    @Override
    public synchronized Sight sight(Sight sight, Actor by) {
        come(sight.at());
        Said.reason(sight.how());
        pen.write(Act.KEEP_TRAINING, Kinds.SIGHT, Watched.body(sight), by);
        return sight;
    }

    @Override
    public synchronized BenchLight light(BenchLight light, Actor by) {
        come(light.at());
        if (light.lux().signum() < 0) {
            throw Said.wrong("lux", "lux.expected", Decimals.of(light.lux()));
        }
        pen.write(Act.KEEP_TRAINING, Kinds.LIGHT, Watched.body(light), by);
        return light;
    }

    @Override
    public synchronized UUID observed(Observation observation, Actor by) {
        come(observation.at());
        if (observation.person().equals(by.who())) {
            throw Said.refused("training.own", observation.person());
        }
        if (observation.steps().isEmpty()) {
            throw Said.wrong("steps", "steps.none");
        }
        return pen.write(Act.KEEP_TRAINING, Kinds.OBSERVED, Watched.body(observation), by)
                .id();
    }

    private void come(Instant at) {
        if (at.isAfter(book.now())) {
            throw Said.wrong("at", "time.ahead", at);
        }
    }

    @Override
    public synchronized Questions issue(Questions questions, Actor by) {
        return papers.issue(questions, by);
    }

    @Override
    public synchronized Paper paper(String set) {
        return papers.paper(set);
    }

    @Override
    public synchronized boolean answered(Paper paper, Map<String, Integer> choices, Actor by) {
        return papers.answered(paper, choices, by);
    }

    @Override
    public synchronized void countersign(UUID about, Actor by) {
        Told told = book.told("id = ?", about).stream()
                .findFirst()
                .orElseThrow(() -> Said.wrong("about", "seen.unknown", about));
        if (!Countersigned.concerns(told, by.who())) {
            throw Said.refused("seen.other", about, by.who());
        }
        boolean before = book
                .told("kind = ? and person = ?", Kinds.SEEN, by.who().value())
                .stream()
                .anyMatch(each -> each.fields().text("about").equals(about.toString()));
        if (before) {
            throw Said.refused("seen.already", about);
        }
        Json.Obj body = Json.object()
                .with("person", by.who().value())
                .with("about", about.toString())
                .with("at", Bodies.time(book.now()));
        pen.write(Act.ACKNOWLEDGE, Kinds.SEEN, body, by);
    }
}
