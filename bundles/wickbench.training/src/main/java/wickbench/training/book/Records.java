package wickbench.training.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.training.BenchLight;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;
import wickbench.training.Competences;
import wickbench.training.Due;
import wickbench.training.Happening;
import wickbench.training.Matrix;
import wickbench.training.PersonRecord;
import wickbench.training.PersonRecord.RoundScore;
import wickbench.training.Questions;
import wickbench.training.Round;
import wickbench.training.Rounds;
import wickbench.training.Sight;
import wickbench.training.Terms;

/** Answers for the training book. */
@Component
public final class Records implements Competences {
    private static final Set<String> ENVELOPE = Set.of("person", "at", "signature", "witness", "questions");

    private final Book book;
    private final Pen pen;
    private final People people;
    private final Rounds rounds;

    @Activate
    public Records(@Reference Book book, @Reference Pen pen, @Reference People people, @Reference Rounds rounds) {
        this.book = book;
        this.pen = pen;
        this.people = people;
        this.rounds = rounds;
    }

    @Override
    public Competence of(PersonId person, MethodId method, Instant at) {
        return book.competence(person, method, at);
    }

    @Override
    public Matrix matrix(Instant at) {
        List<Person> who = listed();
        List<MethodId> methods = List.copyOf(book.methods(at));
        List<Competence> cells = new ArrayList<>();
        for (Person person : who) {
            methods.forEach(method -> cells.add(of(person.id(), method, at)));
        }
        return new Matrix(LocalDate.ofInstant(at, zone()), terms(at), who, methods, cells);
    }

    private List<Person> listed() {
        Map<PersonId, Person> who = new java.util.TreeMap<>();
        people.all().stream()
                .filter(person -> person.roles().contains(Role.OPERATOR))
                .forEach(person -> who.put(person.id(), person));
        book.people().forEach(id -> who.computeIfAbsent(id, this::known));
        return List.copyOf(who.values());
    }

    private Person known(PersonId id) {
        return people.find(id).orElseGet(() -> new Person(id, Optional.empty(), Set.of()));
    }

    @Override
    public PersonRecord person(PersonId person, Instant at) {
        List<Competence> competences = book.methods(at).stream()
                .map(method -> of(person, method, at))
                .filter(each ->
                        each.state() != CompetenceState.NEVER || each.tested().isPresent())
                .toList();
        List<RoundScore> scores = rounds.all().stream()
                .flatMap(round -> round.scoreOf(person).map(score -> new RoundScore(round, score)).stream())
                .sorted(java.util.Comparator.comparing(score -> score.round().opened()))
                .toList();
        return new PersonRecord(person, competences, sight(person), happenings(person, at), scores);
    }

    private List<Happening> happenings(PersonId person, Instant at) {
        return book.told("person = ? and acted_at <= ?", person.value(), at).stream()
                .map(this::happening)
                .toList();
    }

    private Happening happening(Told told) {
        Map<String, String> facts = new LinkedHashMap<>();
        told.body().members().forEach((name, value) -> {
            if (!ENVELOPE.contains(name) && !(value instanceof Json.Arr) && !(value instanceof Json.Obj)) {
                facts.put(name, value instanceof Json.Text text ? text.value() : value.canonical());
            }
        });
        return new Happening(pen.entry(told.entry()), told.at(), told.signed(), facts);
    }

    @Override
    public Terms terms(Instant at) {
        return book.terms(at);
    }

    @Override
    public List<BenchLight> lights() {
        Map<String, BenchLight> newest = new java.util.TreeMap<>();
        book.told("kind = ?", Kinds.LIGHT).stream()
                .map(told -> new BenchLight(
                        told.fields().text("bench"), told.at(), told.fields().decimal("lux")))
                .forEach(light -> newest.put(light.bench(), light));
        return List.copyOf(newest.values());
    }

    @Override
    public Optional<Sight> sight(PersonId person) {
        return book.told("kind = ? and person = ?", Kinds.SIGHT, person.value()).stream()
                .reduce((earlier, later) -> later)
                .map(Watched::sight);
    }

    @Override
    public List<Questions> questions() {
        Map<String, Questions> newest = new java.util.TreeMap<>();
        book.told("kind = ?", Kinds.QUESTIONS).stream()
                .map(told -> QuestionsJson.read(told.fields()))
                .forEach(set -> newest.put(set.name(), set));
        return List.copyOf(newest.values());
    }

    @Override
    public List<Due> due(Instant now) {
        List<Round> all = rounds.all();
        List<Told> observed = book.told("kind = ?", Kinds.OBSERVED);
        List<Told> seen = book.told("kind = ?", Kinds.SEEN);
        return new Dues(matrix(now), zone()).of(all, observed, seen, lights(), book.told("kind = ?", Kinds.SUSPENDED));
    }

    @Override
    public ZoneId zone() {
        return book.zone();
    }
}
