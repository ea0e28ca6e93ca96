package wickbench.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.clash.Decision;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/** Who is enrolled, in which roles, which file holds the rest, and who guessed wrong how often. */
@Component
public final class PeopleView implements IndexView {
    static final String NAME = "people";

    /** A subject is a person by their id. */
    static final String PERSON = "person:";

    /** Whom failures of ids are counted for that nobody has. */
    static final String NOBODY = "?";

    @Activate
    public PeopleView() {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 3;
    }

    @Override
    public List<String> tables() {
        return List.of(
                "create table person (id varchar(32) primary key, file char(64) not null,"
                        + " file_station varchar(32) not null, file_seq bigint not null,"
                        + " secret varchar(16) not null, secret_at timestamp(3) with time zone, keyed boolean not null,"
                        + " forgotten boolean not null)",
                // with the entry that gave it, so that a role which no entry gave is none
                "create table person_role (person varchar(32) not null, role varchar(32) not null,"
                        + " station varchar(32) not null, seq bigint not null, primary key (person, role))",
                "create table failure (person varchar(32) not null, shown varchar(16) not null,"
                        + " failures integer not null, last_at timestamp(3) with time zone not null,"
                        + " primary key (person, shown))");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return about(entry).map(person -> Set.of(PERSON + person)).orElse(Set.of());
    }

    private static Optional<String> about(Entry entry) {
        if (!entry.kind().startsWith("person.") || entry.v() != 1) {
            return Optional.empty();
        }
        Optional<String> person =
                Fields.of(entry.ref().toString(), entry.body()).optionalText("person");
        return entry.kind().equals(Attempted.FAILED) || entry.kind().equals(Attempted.GOOD)
                ? Optional.of(person.orElse(NOBODY))
                : person;
    }

    @Override
    public void forget(String subject, Rows rows) {
        String person = subject.substring(PERSON.length());
        rows.write("delete from person where id = ?", person);
        rows.write("delete from person_role where person = ?", person);
        rows.write("delete from failure where person = ?", person);
    }

    /** Who somebody is and what they may do, said here and there. */
    @Override
    public Optional<Decision> decision(Entry entry) {
        boolean decides = entry.v() == 1
                && Set.of(Enrolled.KIND, Assigned.KIND, Forgotten.KIND).contains(entry.kind());
        return decides
                ? about(entry).map(person -> new Decision(PERSON + person, entry.kind() + claim(entry)))
                : Optional.empty();
    }

    /** Returns what is said, without who signed it. */
    private static String claim(Entry entry) {
        return Stream.of("roles", "file")
                .flatMap(member -> entry.body().get(member).stream())
                .map(Json::canonical)
                .collect(Collectors.joining(" ", " ", ""));
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (!entry.kind().startsWith("person.") || entry.v() != 1) {
            return;
        }
        String source = entry.ref().toString();
        switch (entry.kind()) {
            case Enrolled.KIND -> enrol(Enrolled.read(source, entry.body()).orRefuse(), entry, rows);
            case Assigned.KIND -> {
                Assigned assigned = Assigned.read(source, entry.body()).orRefuse();
                assign(assigned.person(), assigned.roles(), entry, rows);
            }
            case FileChanged.PASSPHRASE ->
                passphrase(FileChanged.read(source, entry.body()).orRefuse(), entry, rows);
            case FileChanged.PIN, FileChanged.BADGE -> {
                FileChanged changed = FileChanged.read(source, entry.body()).orRefuse();
                file(changed.person(), changed.file(), entry, rows);
            }
            case Recovered.KIND -> recover(Recovered.read(source, entry.body()).orRefuse(), entry, rows);
            case Forgotten.KIND ->
                forget(Forgotten.read(source, entry.body()).orRefuse().person(), rows);
            case Attempted.FAILED -> failed(Attempted.read(source, entry.body()).orRefuse(), entry, rows);
            case Attempted.GOOD -> good(Attempted.read(source, entry.body()).orRefuse(), rows);
            default -> {
                // a kind of a newer program
            }
        }
    }

    private static void enrol(Enrolled enrolled, Entry entry, Rows rows) {
        boolean known = rows.first(
                        "select id from person where id = ?",
                        row -> true,
                        enrolled.person().value())
                .isPresent();
        if (known) {
            // another station enrolled somebody by the same id
            file(enrolled.person(), enrolled.file(), entry, rows);
            assign(enrolled.person(), enrolled.roles(), entry, rows);
            return;
        }
        rows.write(
                "insert into person (id, file, file_station, file_seq, secret, secret_at, keyed, forgotten)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                enrolled.person().value(),
                enrolled.file().hex(),
                entry.ref().station().value(),
                entry.ref().seq(),
                Secret.NONE.name(),
                Optional.empty(),
                false,
                false);
        assign(enrolled.person(), enrolled.roles(), entry, rows);
    }

    private static void assign(PersonId person, Set<Role> roles, Entry entry, Rows rows) {
        rows.write("delete from person_role where person = ?", person.value());
        roles.forEach(role -> give(person, role, entry, rows));
    }

    private static void give(PersonId person, Role role, Entry entry, Rows rows) {
        rows.write(
                "insert into person_role (person, role, station, seq) values (?, ?, ?, ?)",
                person.value(),
                role.code(),
                entry.ref().station().value(),
                entry.ref().seq());
    }

    private static void passphrase(FileChanged changed, Entry entry, Rows rows) {
        file(changed.person(), changed.file(), entry, rows);
        secret(changed.person(), changed.once() ? Secret.ONCE : Secret.PASSPHRASE, entry, rows);
    }

    private static void file(PersonId person, Hash file, Entry entry, Rows rows) {
        rows.write(
                "update person set file = ?, file_station = ?, file_seq = ? where id = ?",
                file.hex(),
                entry.ref().station().value(),
                entry.ref().seq(),
                person.value());
    }

    private static void secret(PersonId person, Secret secret, Entry entry, Rows rows) {
        rows.write(
                "update person set secret = ?, secret_at = ?, keyed = ? where id = ?",
                secret.name(),
                entry.at(),
                true,
                person.value());
        rows.write("delete from failure where person = ? and shown = ?", person.value(), Attempts.PASSPHRASE);
    }

    private static void recover(Recovered recovered, Entry entry, Rows rows) {
        file(recovered.person(), recovered.file(), entry, rows);
        secret(recovered.person(), Secret.ONCE, entry, rows);
        rows.write(
                "delete from person_role where person = ? and role = ?",
                recovered.person().value(),
                Role.ADMINISTRATOR.code());
        give(recovered.person(), Role.ADMINISTRATOR, entry, rows);
    }

    private static void forget(PersonId person, Rows rows) {
        rows.write("delete from person_role where person = ?", person.value());
        rows.write(
                "update person set secret = ?, forgotten = ? where id = ?", Secret.NONE.name(), true, person.value());
    }

    private static void failed(Attempted attempted, Entry entry, Rows rows) {
        good(attempted, rows);
        rows.write(
                "insert into failure (person, shown, failures, last_at) values (?, ?, ?, ?)",
                key(attempted.person()),
                attempted.shown(),
                attempted.failures(),
                entry.at());
    }

    private static void good(Attempted attempted, Rows rows) {
        rows.write("delete from failure where person = ? and shown = ?", key(attempted.person()), attempted.shown());
    }

    /** Ids that nobody has share one row: who tries many ids waits as long as who tries one. */
    static String key(Optional<PersonId> person) {
        return person.map(PersonId::value).orElse(NOBODY);
    }
}
