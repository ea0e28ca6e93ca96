package wickbench.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Words;

/**
 * The people of this home.
 *
 * <p>Whoever records something about people must be enrolled. Only the first of all enrols themself.
 */
@Component
public final class PeopleService implements People {
    private static final int LONGEST_NAME = 120;

    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Words words = Words.of(PeopleService.class, "people");

    @Activate
    public PeopleService(@Reference Home home, @Reference Journal journal, @Reference Index index) {
        this.home = home;
        this.journal = journal;
        this.index = index;
    }

    @Override
    public List<Person> all() {
        return known().stream().map(this::named).toList();
    }

    @Override
    public Optional<Person> find(PersonId id) {
        return known().stream().filter(each -> each.id().equals(id)).findFirst().map(this::named);
    }

    @Override
    public synchronized Person enrol(PersonId id, String name, Set<Role> roles, PersonId by) {
        List<PeopleView.Known> known = known();
        if (known.stream().anyMatch(each -> each.id().equals(id))) {
            throw new Refusal("people.taken", words.get("people.taken", id));
        }
        refuseStranger(known, known.isEmpty() ? List.of(id) : List.of(), by);
        String proper = proper(name);
        // the file first: an entry must never name a file that is not there
        Hash file = files().keep(id, proper);
        append(Enrolled.KIND, Enrolled.VERSION, new Enrolled(id, roles, file).body(), by);
        return new Person(id, Optional.of(proper), roles);
    }

    @Override
    public synchronized Person assign(PersonId id, Set<Role> roles, PersonId by) {
        List<PeopleView.Known> known = known();
        PeopleView.Known person = known.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal("people.unknown", words.get("people.unknown", id)));
        refuseStranger(known, List.of(), by);
        append(Assigned.KIND, Assigned.VERSION, new Assigned(id, roles).body(), by);
        return named(new PeopleView.Known(id, person.file(), roles));
    }

    private void refuseStranger(List<PeopleView.Known> known, List<PersonId> also, PersonId by) {
        boolean here =
                also.contains(by) || known.stream().anyMatch(each -> each.id().equals(by));
        if (!here) {
            String key = known.isEmpty() ? "people.first" : "people.unknown";
            throw new Refusal("people.unknown", words.get(key, by));
        }
    }

    private String proper(String name) {
        String stripped = name.strip();
        if (stripped.isEmpty()
                || stripped.length() > LONGEST_NAME
                || stripped.chars().anyMatch(Character::isISOControl)) {
            throw new BadInput(Complaint.of("name", words.get("people.name", LONGEST_NAME)));
        }
        return stripped;
    }

    private void append(String kind, int version, Json.Obj body, PersonId by) {
        journal.append(List.of(new Draft(Draft.randomId(home.chance()), by, kind, version, body)));
    }

    private List<PeopleView.Known> known() {
        return index.read(PeopleView.NAME, PeopleView::all);
    }

    private Person named(PeopleView.Known known) {
        return new Person(known.id(), files().name(known.id(), known.file()), known.roles());
    }

    private NameFiles files() {
        return new NameFiles(home.folder(), home.chance());
    }
}
