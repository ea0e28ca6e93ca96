package wickbench.people;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.check.Refusal;
import wickbench.api.clash.Clash;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;

/**
 * Everyone who was ever enrolled, believed only as far as the journal says so.
 *
 * <p>A role or a file in the index counts when the entry that it names really gave it: whoever changes rows by SQL gains nothing.
 */
@Component(service = Roster.class)
public final class Roster {
    private final Home home;
    private final Journal journal;
    private final Index index;

    @Activate
    public Roster(@Reference Home home, @Reference Journal journal, @Reference Index index) {
        this.home = home;
        this.journal = journal;
        this.index = index;
    }

    /** Returns everyone, forgotten ones too, by id; files of the forgotten that came back from a copy are removed again. */
    List<Known> all() {
        List<Known> all = index.read(PeopleView.NAME, rows -> {
            Map<PersonId, Map<Role, EntryRef>> given = given(rows);
            return rows.read("select * from person order by id", row -> known(row, given));
        });
        all = undoubted(all);
        all.stream().filter(Known::forgotten).forEach(known -> files().remove(known.id()));
        return all;
    }

    /** Leaves those of whom two stations said otherwise the roles that both gave, until a person has settled it. */
    private List<Known> undoubted(List<Known> all) {
        Map<String, Clash> clashes = index.clashes().stream().collect(Collectors.toMap(Clash::subject, clash -> clash));
        return all.stream()
                .map(known -> Optional.ofNullable(clashes.get(PeopleView.PERSON + known.id()))
                        .map(clash -> known.only(role -> givenByAll(clash, role)))
                        .orElse(known))
                .toList();
    }

    private boolean givenByAll(Clash clash, Role role) {
        return clash.decisions().stream()
                .allMatch(decision -> journal.entry(decision)
                        .filter(entry -> gives(entry, role))
                        .isPresent());
    }

    /** Returns a person, unless forgotten. */
    Optional<Known> find(PersonId id) {
        return here().stream().filter(known -> known.id().equals(id)).findFirst();
    }

    /** Returns a person, or says that nobody has the id. */
    Known need(PersonId id) {
        return find(id).orElseThrow(() -> new Refusal("people.unknown", PeopleWords.get("people.unknown", id)));
    }

    /** Returns everyone who is not forgotten. */
    List<Known> here() {
        return all().stream().filter(known -> !known.forgotten()).toList();
    }

    /** Tells whether anybody ever had a passphrase. */
    boolean keyed() {
        return all().stream().anyMatch(Known::keyed);
    }

    /** Returns what a person's file says, if it is there and the one that an entry named. */
    Optional<PersonFile> file(Known known) {
        boolean named = body(known.fileFrom(), known.id())
                .flatMap(body -> text(body, "file"))
                .filter(known.file().hex()::equals)
                .isPresent();
        return named ? files().read(known.id(), known.file()) : Optional.empty();
    }

    /** Tells whether an entry gave this person this role. */
    boolean has(Known known, Role role) {
        return Optional.ofNullable(known.given().get(role))
                .flatMap(journal::entry)
                .filter(entry -> names(entry, known.id()) && gives(entry, role))
                .isPresent();
    }

    PersonFiles files() {
        return new PersonFiles(home.folder(), home.chance());
    }

    private static boolean gives(Entry entry, Role role) {
        return entry.kind().equals(Recovered.KIND)
                ? role == Role.ADMINISTRATOR
                : (entry.kind().equals(Enrolled.KIND) || entry.kind().equals(Assigned.KIND))
                        && entry.body()
                                .get("roles")
                                .filter(Json.Arr.class::isInstance)
                                .map(Json.Arr.class::cast)
                                .filter(roles -> roles.items().contains(new Json.Text(role.code())))
                                .isPresent();
    }

    private Optional<Json.Obj> body(EntryRef ref, PersonId person) {
        return journal.entry(ref).filter(entry -> names(entry, person)).map(Entry::body);
    }

    private static boolean names(Entry entry, PersonId person) {
        return entry.kind().startsWith("person.")
                && text(entry.body(), "person").filter(person.value()::equals).isPresent();
    }

    private static Optional<String> text(Json.Obj body, String name) {
        return body.get(name)
                .filter(Json.Text.class::isInstance)
                .map(Json.Text.class::cast)
                .map(Json.Text::value);
    }

    private static Map<PersonId, Map<Role, EntryRef>> given(Rows rows) {
        Map<PersonId, Map<Role, EntryRef>> given = new java.util.HashMap<>();
        rows.read(
                "select * from person_role",
                row -> given.computeIfAbsent(new PersonId(row.text("person")), id -> new EnumMap<>(Role.class))
                                .put(Coded.of(Role.class, row.text("role")), ref(row, "station", "seq"))
                        == null);
        return given;
    }

    private static Known known(Row row, Map<PersonId, Map<Role, EntryRef>> given) {
        PersonId id = new PersonId(row.text("id"));
        return new Known(
                id,
                new Hash(row.text("file")),
                ref(row, "file_station", "file_seq"),
                given.getOrDefault(id, Map.of()),
                Secret.valueOf(row.text("secret")),
                row.optionalInstant("secret_at"),
                row.flag("keyed"),
                row.flag("forgotten"));
    }

    private static EntryRef ref(Row row, String station, String seq) {
        return new EntryRef(new StationId(row.text(station)), row.whole(seq));
    }
}
