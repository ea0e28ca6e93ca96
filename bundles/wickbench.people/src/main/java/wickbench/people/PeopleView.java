package wickbench.people;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;

/** Who is enrolled, in which roles, and which file holds the name. */
@Component
public final class PeopleView implements IndexView {
    static final String NAME = "people";

    /** A person as the tables know them. */
    record Known(PersonId id, Hash file, Set<Role> roles) {}

    @Activate
    public PeopleView() {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 1;
    }

    @Override
    public List<String> tables() {
        return List.of(
                "create table person (id varchar(32) primary key, name_file char(64) not null)",
                "create table person_role (person varchar(32) not null, role varchar(32) not null,"
                        + " primary key (person, role))");
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(Enrolled.KIND, Enrolled.VERSION)) {
            enrol(Enrolled.read(entry.ref().toString(), entry.body()).orRefuse(), rows);
        } else if (entry.is(Assigned.KIND, Assigned.VERSION)) {
            Assigned assigned =
                    Assigned.read(entry.ref().toString(), entry.body()).orRefuse();
            assign(assigned.person(), assigned.roles(), rows);
        }
    }

    /** Returns everyone, by id. */
    static List<Known> all(Rows rows) {
        return rows.read("select id, name_file from person order by id", row -> {
            PersonId id = new PersonId(row.text("id"));
            return new Known(id, new Hash(row.text("name_file")), roles(id, rows));
        });
    }

    private static void enrol(Enrolled enrolled, Rows rows) {
        rows.write(
                "insert into person (id, name_file) values (?, ?)",
                enrolled.person().value(),
                enrolled.file().hex());
        assign(enrolled.person(), enrolled.roles(), rows);
    }

    private static void assign(PersonId person, Set<Role> roles, Rows rows) {
        rows.write("delete from person_role where person = ?", person.value());
        for (Role role : roles) {
            rows.write("insert into person_role (person, role) values (?, ?)", person.value(), role.code());
        }
    }

    private static Set<Role> roles(PersonId id, Rows rows) {
        return new TreeSet<>(rows.read(
                "select role from person_role where person = ?",
                row -> Coded.of(Role.class, row.text("role")),
                id.value()));
    }
}
