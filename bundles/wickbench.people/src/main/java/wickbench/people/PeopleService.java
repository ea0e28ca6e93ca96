package wickbench.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/**
 * The people of this home.
 *
 * <p>The first of all enrols themself, as an administrator; from then on administrators enrol.
 */
@Component
public final class PeopleService implements People {
    private static final int LONGEST_NAME = 120;

    private final Home home;
    private final Journal journal;
    private final Roster roster;
    private final Authority authority;
    private final Keeping keeping;

    @Activate
    public PeopleService(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Roster roster,
            @Reference Authority authority,
            @Reference Keeping keeping) {
        this.home = home;
        this.journal = journal;
        this.roster = roster;
        this.authority = authority;
        this.keeping = keeping;
    }

    @Override
    public List<Person> all() {
        return roster.here().stream().map(this::named).toList();
    }

    @Override
    public Optional<Person> find(PersonId id) {
        return roster.all().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .map(this::named);
    }

    @Override
    public synchronized Person enrol(PersonId id, String name, Set<Role> roles, PersonId by) {
        List<Known> known = roster.all();
        if (known.stream().anyMatch(each -> each.id().equals(id))) {
            throw new Refusal("people.taken", PeopleWords.get("people.taken", id));
        }
        String proper = proper(name);
        if (known.isEmpty()) {
            refuseFirst(id, roles, by);
        } else {
            // before the file is written; the entry is asked for again below
            authority.authorise(Act.ENROL_PERSON, draft(Enrolled.KIND, Json.object(), by));
        }
        // the file first: an entry must never name a file that is not there
        Hash file = roster.files().keep(id, PersonFile.named(proper));
        append(Act.ENROL_PERSON, draft(Enrolled.KIND, new Enrolled(id, roles, file).body(), by));
        return new Person(id, Optional.of(proper), roles);
    }

    @Override
    public synchronized Person assign(PersonId id, Set<Role> roles, PersonId by) {
        Known person = roster.need(id);
        Draft draft = draft(Assigned.KIND, new Assigned(id, roles).body(), by);
        Draft allowed = authority.authorise(Act.ASSIGN_ROLES, draft);
        keeping.refuseLastAdministrator(person, roles);
        journal.append(List.of(allowed));
        return new Person(id, name(person), roles);
    }

    private static void refuseFirst(PersonId id, Set<Role> roles, PersonId by) {
        if (!id.equals(by)) {
            throw new Refusal("people.unknown", PeopleWords.get("people.first", by));
        }
        if (!roles.contains(Role.ADMINISTRATOR)) {
            throw new Refusal("people.role", PeopleWords.get("people.first-role"));
        }
    }

    private static String proper(String name) {
        String stripped = name.strip();
        if (stripped.isEmpty()
                || stripped.length() > LONGEST_NAME
                || stripped.chars().anyMatch(Character::isISOControl)) {
            throw new BadInput(Complaint.of("name", PeopleWords.get("people.name", LONGEST_NAME)));
        }
        return stripped;
    }

    private void append(Act act, Draft draft) {
        journal.append(List.of(authority.authorise(act, draft)));
    }

    private Draft draft(String kind, Json.Obj body, PersonId by) {
        return new Draft(Draft.randomId(home.chance()), by, kind, 1, body);
    }

    private Person named(Known known) {
        return new Person(known.id(), name(known), known.roles());
    }

    private Optional<String> name(Known known) {
        return known.forgotten() ? Optional.empty() : roster.file(known).map(PersonFile::name);
    }
}
