package wickbench.people;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.people.profile.ProfileInForce;
import wickbench.people.profile.ProfileShelf;
import wickbench.people.profile.ProfileView;

/** A home on the disk with journal, index, bench and people, and a clock that stands until it is moved. */
final class TestHouse implements AutoCloseable {
    static final Instant START = Instant.parse("2026-03-02T06:00:00Z");
    static final PersonId ADA = new PersonId("p-01");
    static final PersonId BO = new PersonId("p-02");
    static final PersonId CY = new PersonId("p-03");

    /** Hundreds of secrets are shown in these tests; what the usual cost is, and that homes get it, has tests of its own. */
    static final String ADAS = "seven grey herons wade";

    static final String BOS = "quiet lamps by the river";
    static final String ONCE = "come in and choose yours";

    private final JournalFolder journal;
    private final H2Index index;
    private final SimulatedClock clock;
    private final Roster roster;
    private final HouseSignIn signIn;
    private final HouseAuthority authority;
    private final HouseCredentials credentials;
    private final HouseRecovery recovery;
    private final HouseWatch watch;
    private final PeopleService people;
    private final ProfileShelf profiles;
    private final MethodShelf methods;
    private final RecordingDoor readings;

    TestHouse(Path folder) {
        this(folder, START);
    }

    /** Opens the folder anew, as after a restart; what was in memory is gone. */
    TestHouse(Path folder, Instant now) {
        HomeFolder home = new HomeFolder(folder);
        SimulatedHome simulated = new SimulatedHome(home, new SimulatedClock(now));
        clock = simulated.time();
        journal = JournalFolder.open(simulated, entries -> {});
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new PeopleView(), new ProfileView(), new RecoveryView(), new BenchView()));
        roster = new Roster(simulated, journal, index);
        signIn = new HouseSignIn(simulated, journal, index, roster, HashCost.LEAST);
        ProfileInForce held = new ProfileInForce(simulated, index);
        authority = new HouseAuthority(simulated, roster, signIn, held);
        Keeping keeping = new Keeping(simulated, journal, roster, held);
        SecretFiles files = new SecretFiles(simulated, roster, HashCost.LEAST);
        credentials = new HouseCredentials(simulated, journal, roster, signIn, authority, keeping, files);
        watch = new HouseWatch(simulated, index, roster, held);
        recovery = new HouseRecovery(simulated, journal, index, roster, signIn, authority, keeping, files);
        people = new PeopleService(simulated, journal, roster, authority, keeping);
        profiles = new ProfileShelf(simulated, journal, held, authority);
        methods = new MethodShelf(journal, index, authority);
        readings = new RecordingDoor(simulated, journal, index, methods, new Neighbours(List.of(), held), authority);
    }

    /** Enrols Ada, administrator, and Bo, who is what is told; both with passphrases. */
    TestHouse locked(Role... bos) {
        people.enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        credentials.set(ADA, Optional.empty(), typed(ADAS));
        signIn.open(ADA, typed(ADAS));
        people.enrol(BO, "Bo Lind", Set.of(bos), ADA);
        credentials.reset(BO, typed(ONCE), adas(), Optional.empty());
        credentials.set(BO, Optional.of(typed(ONCE)), typed(BOS));
        return this;
    }

    static Passphrase typed(String text) {
        return Passphrase.of(text.toCharArray());
    }

    static Signing adas() {
        return new Signing(ADA, typed(ADAS));
    }

    static Signing bos() {
        return new Signing(BO, typed(BOS));
    }

    void pass(Duration time) {
        clock.moveTo(clock.instant().plus(time));
    }

    Instant now() {
        return clock.instant();
    }

    PeopleService people() {
        return people;
    }

    Credentials credentials() {
        return credentials;
    }

    HouseWatch watch() {
        return watch;
    }

    HouseRecovery recovery() {
        return recovery;
    }

    HouseSignIn signIn() {
        return signIn;
    }

    HouseAuthority authority() {
        return authority;
    }

    Roster roster() {
        return roster;
    }

    ProfileShelf profiles() {
        return profiles;
    }

    MethodShelf methods() {
        return methods;
    }

    RecordingDoor readings() {
        return readings;
    }

    SheetDesk sheets() {
        return new SheetDesk(methods, () -> Site.of(Optional.empty(), journal.founding()));
    }

    Journal journal() {
        return journal;
    }

    H2Index index() {
        return index;
    }

    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        journal.stations().forEach(station -> journal.read(station, 0, entries::add));
        return entries;
    }

    List<Entry> entries(String kind) {
        return entries().stream().filter(entry -> entry.kind().equals(kind)).toList();
    }

    Entry last() {
        List<Entry> entries = entries();
        return entries.get(entries.size() - 1);
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
