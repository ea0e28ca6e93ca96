package wickbench.training.book;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.training.Competence;
import wickbench.training.Terms;

/** Reads the book in the index. */
@Component(service = Book.class)
public final class IndexedBook implements Book {
    private static final String EVENTS =
            "select station, seq, id, at, acted_at, kind, written_by, signed, body from training_event where ";

    private final Home home;
    private final Index index;
    private final SiteFacts site;

    @Activate
    public IndexedBook(@Reference Home home, @Reference Index index, @Reference SiteFacts site) {
        this.home = home;
        this.index = index;
        this.site = site;
    }

    @Override
    public Instant now() {
        return home.clock().instant();
    }

    @Override
    public ZoneId zone() {
        return home.isBegun() ? site.now().zone() : ZoneId.of("UTC");
    }

    private <T> T read(T unfounded, Function<Rows, T> work) {
        return home.isBegun() ? index.read(TrainingView.NAME, work) : unfounded;
    }

    @Override
    public List<Told> told(String condition, Object... values) {
        return read(List.<Told>of(), rows -> told(rows, condition, values));
    }

    private static List<Told> told(Rows rows, String condition, Object... values) {
        return rows.read(EVENTS + condition, IndexedBook::told, values).stream()
                .sorted(Told.IN_ORDER)
                .toList();
    }

    private static Told told(Row row) {
        EntryRef ref = ref(row);
        return new Told(
                ref,
                row.uuid("id"),
                row.instant("at"),
                new PersonId(row.text("written_by")),
                row.flag("signed"),
                row.instant("acted_at"),
                row.text("kind"),
                body(row, ref));
    }

    private static Json.Obj body(Row row, EntryRef ref) {
        return JsonReader.readObject(ref.toString(), row.text("body")).orRefuse();
    }

    private static EntryRef ref(Row row) {
        return new EntryRef(new StationId(row.text("station")), row.whole("seq"));
    }

    @Override
    public Competence competence(PersonId person, MethodId method, Instant at) {
        ZoneId zone = zone();
        return Course.of(person, method, zone, read(List.<Step>of(), rows -> steps(rows, person, method, at)), at);
    }

    private static List<Step> steps(Rows rows, PersonId person, MethodId method, Instant at) {
        List<Step> steps = new ArrayList<>();
        List<Told> told = told(
                rows,
                "kind = ? or person = ? and (method = ? or method is null)",
                Kinds.TERMS,
                person.value(),
                method.value());
        Book.standing(told).stream().flatMap(each -> Bodies.step(each).stream()).forEach(steps::add);
        steps.addAll(rows.read(
                "select at, version from issued where method = ? order by at, station, seq",
                row -> new Step.Issued(
                        row.instant("at"), row.optionalWhole("version").map(Long::intValue)),
                method.value()));
        steps.addAll(tested(rows, person, method, at, lastAuthorised(steps, at)));
        return steps;
    }

    /** What was tested before the newest authorisation moves nothing any more; only the newest of it is told. */
    private static List<Step> tested(Rows rows, PersonId person, MethodId method, Instant at, Instant since) {
        List<Step> tested = new ArrayList<>();
        rows.first(
                        "select taken from tested where person = ? and method = ? and taken < ? order by taken desc limit 1",
                        row -> new Step.Tested(row.instant("taken")),
                        person.value(),
                        method.value(),
                        since)
                .ifPresent(tested::add);
        tested.addAll(rows.read(
                "select taken from tested where person = ? and method = ? and taken >= ? and taken <= ? order by taken",
                row -> new Step.Tested(row.instant("taken")),
                person.value(),
                method.value(),
                since,
                at));
        return tested;
    }

    private static Instant lastAuthorised(List<Step> steps, Instant at) {
        return steps.stream()
                .filter(Step.Authorised.class::isInstance)
                .map(Step::at)
                .filter(when -> !when.isAfter(at))
                .max(Instant::compareTo)
                .orElse(at);
    }

    @Override
    public Terms terms(Instant at) {
        return told("kind = ? and acted_at <= ?", Kinds.TERMS, at).stream()
                .reduce((earlier, later) -> later)
                .map(told -> Bodies.terms(told.fields()))
                .orElse(Terms.USUAL);
    }

    @Override
    public boolean begun(Instant at) {
        return read(
                false,
                rows -> rows.first(
                                "select seq from training_event where kind = ? and acted_at <= ? limit 1",
                                row -> row.whole("seq"),
                                Kinds.AUTHORISED,
                                at)
                        .isPresent());
    }

    @Override
    public Set<MethodId> methods(Instant at) {
        Set<MethodId> methods = new TreeSet<>(read(Set.<MethodId>of(), rows -> inForce(rows, at)));
        told("kind = ? and acted_at <= ?", Kinds.AUTHORISED, at)
                .forEach(told -> methods.add(new MethodId(told.fields().text("method"))));
        return methods;
    }

    private static Set<MethodId> inForce(Rows rows, Instant at) {
        Set<MethodId> methods = new TreeSet<>();
        rows.read(
                        "select method, version from issued where at <= ? order by at, station, seq",
                        row -> new Object[] {new MethodId(row.text("method")), row.optionalWhole("version")},
                        at)
                .forEach(row -> {
                    MethodId method = (MethodId) row[0];
                    if (((Optional<?>) row[1]).isPresent()) {
                        methods.add(method);
                    } else {
                        methods.remove(method);
                    }
                });
        return methods;
    }

    @Override
    public Set<PersonId> people() {
        return read(
                Set.<PersonId>of(),
                rows -> new TreeSet<>(rows.read(
                        "select distinct person from training_event where person is not null",
                        row -> new PersonId(row.text("person")))));
    }
}
