package wickbench.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Checked;
import wickbench.api.check.Refusal;
import wickbench.api.index.Index;
import wickbench.api.index.Row;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Journal;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.person.PersonId;
import wickbench.reading.MethodJson;

/** The methods that this site has issued, from the index. */
@Component(service = {Methods.class, MethodShelf.class})
public final class MethodShelf implements Methods, MethodSource {
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    /** Methods by their canonical form, parsed once: every strip of a run asks for one. */
    private final Map<String, Method> parsed = new ConcurrentHashMap<>();

    @Activate
    public MethodShelf(@Reference Journal journal, @Reference Index index, @Reference Authority authority) {
        this.journal = journal;
        this.index = index;
        this.authority = authority;
    }

    @Override
    public List<IssuedMethod> all() {
        Map<MethodId, IssuedMethod> newest = read("ORDER BY id, version, from_at, station, seq").stream()
                .collect(Collectors.toMap(
                        issued -> issued.method().ref().id(), issued -> issued, (older, newer) -> newer));
        return newest.values().stream()
                .sorted(Comparator.comparing(issued -> issued.method().ref().id()))
                .toList();
    }

    @Override
    public List<IssuedMethod> versions(MethodId id) {
        return read("WHERE id = ? ORDER BY version, from_at, station, seq", id.value());
    }

    /** Nothing is in force from where two stations decided otherwise and until a person has settled it. */
    @Override
    public Optional<Method> inForce(MethodId id, Instant at) {
        return doubtful(id, at)
                ? Optional.empty()
                : versions(id).stream()
                        .filter(issued -> holds(issued, at))
                        .findFirst()
                        .map(IssuedMethod::method);
    }

    private boolean doubtful(MethodId id, Instant at) {
        return index.clash(BenchSubjects.METHOD + id).stream()
                .flatMap(clash -> clash.decisions().stream())
                .flatMap(decision -> journal.entry(decision).stream())
                .anyMatch(decision -> !decision.at().isAfter(at));
    }

    /** Returns the version in force at the start; failing that, the one nearest before, or the first ever issued. */
    @Override
    public Optional<Method> find(MethodId id, Optional<Instant> start) {
        List<IssuedMethod> versions = versions(id);
        Instant at = start.orElse(Instant.MAX);
        return versions.stream()
                .filter(issued -> !issued.from().isAfter(at))
                .reduce((older, newer) -> newer)
                .or(() -> versions.stream().findFirst())
                .map(IssuedMethod::method);
    }

    @Override
    public Checked<Method> read(Path file) {
        return MethodFile.read(file);
    }

    @Override
    public synchronized IssuedMethod issue(Method method, PersonId by, Optional<Passphrase> passphrase) {
        Draft draft = authority.authorise(Act.ISSUE_METHOD, MethodEntries.issued(method, by), passphrase);
        if (index.find(draft.id()).isEmpty()) {
            refuseWrongVersion(method);
            journal.append(List.of(draft));
        }
        IssuedMethod issued = versions(method.ref().id()).stream()
                .filter(each -> each.method().ref().equals(method.ref()))
                .reduce((older, newer) -> newer)
                .orElseThrow();
        if (passphrase.isPresent() && !issued.signed()) {
            throw new Refusal("method.stands-unsigned", BenchWords.get("method.stands-unsigned", method.ref()));
        }
        return issued;
    }

    @Override
    public synchronized void withdraw(MethodId id, String reason, PersonId by, Optional<Passphrase> passphrase) {
        IssuedMethod newest = versions(id).stream()
                .reduce((older, newer) -> newer)
                .filter(issued -> issued.until().isEmpty())
                .orElseThrow(() -> new Refusal("method.not-in-force", BenchWords.get("method.not-in-force", id)));
        Draft draft = MethodEntries.withdrawn(id, newest.method().ref().version(), newest.from(), reason, by);
        journal.append(List.of(authority.authorise(Act.WITHDRAW_METHOD, draft, passphrase)));
    }

    private void refuseWrongVersion(Method method) {
        int next = 1
                + versions(method.ref().id()).stream()
                        .mapToInt(issued -> issued.method().ref().version())
                        .max()
                        .orElse(0);
        if (method.ref().version() != next) {
            throw new Refusal(
                    "method.version",
                    BenchWords.get(
                            "method.version",
                            method.ref().id(),
                            next,
                            method.ref().version()));
        }
    }

    private static boolean holds(IssuedMethod issued, Instant at) {
        return !issued.from().isAfter(at)
                && issued.until().filter(until -> !at.isBefore(until)).isEmpty();
    }

    private List<IssuedMethod> read(String condition, Object... values) {
        return index.read(
                BenchView.NAME, rows -> rows.read("SELECT * FROM method_version " + condition, this::issued, values));
    }

    private static Withdrawal withdrawal(String by, Row row) {
        return new Withdrawal(new PersonId(by), row.text("withdrawn_why"), row.flag("withdrawal_signed"));
    }

    private IssuedMethod issued(Row row) {
        String body = row.text("body");
        return new IssuedMethod(
                parsed.computeIfAbsent(
                        body, text -> MethodJson.read(row.text("id"), text).orRefuse()),
                row.instant("from_at"),
                row.optionalInstant("until_at"),
                new PersonId(row.text("issued_by")),
                row.flag("signed"),
                row.optionalText("withdrawn_by").map(by -> withdrawal(by, row)));
    }
}
