package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

class PeopleServiceTest {
    private static final PersonId ADA = new PersonId("p-01");
    private static final PersonId BO = new PersonId("p-02");
    private static final PersonId NOBODY = new PersonId("p-99");

    @TempDir
    Path folder;

    private TestHouse house;

    @BeforeEach
    void open() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void theFirstEnrolsThemselfAndThenOthers() {
        house.people().enrol(ADA, " Ada Brook ", Set.of(Role.ADMINISTRATOR), ADA);
        house.people().enrol(BO, "Bo Lind", Set.of(Role.OPERATOR, Role.TRAINER), ADA);
        assertThat(house.people().all())
                .containsExactly(
                        new Person(ADA, Optional.of("Ada Brook"), Set.of(Role.ADMINISTRATOR)),
                        new Person(BO, Optional.of("Bo Lind"), Set.of(Role.OPERATOR, Role.TRAINER)));
        assertThat(house.people().find(NOBODY)).isEmpty();
    }

    @Test
    void entriesCarryNoName() throws IOException {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        Entry entry = lastEntry();
        assertThat(entry.kind()).isEqualTo("person.enrolled");
        assertThat(entry.by()).isEqualTo(ADA);
        assertThat(entry.body().canonical()).doesNotContain("Ada").contains("\"roles\":[\"administrator\"]");
        Path file = nameFile();
        assertThat(file.getFileName()).hasToString(Hash.ofContent(Files.readString(file)) + ".json");
        assertThat(Files.readString(file)).matches("\\{\"name\":\"Ada Brook\",\"salt\":\"[0-9a-f]{64}\"}");
        assertThat(entry.body().canonical())
                .contains(Hash.ofContent(Files.readString(file)).hex());
    }

    @Test
    void aNameWithoutItsFileIsNoNameAndThePersonStays() throws IOException {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        Files.delete(nameFile());
        assertThat(house.people().all()).containsExactly(new Person(ADA, Optional.empty(), Set.of(Role.ADMINISTRATOR)));
    }

    @Test
    @Meets("ALCOA+ attributable")
    void anAlteredFileIsNotBelieved() throws IOException {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        Path file = nameFile();
        Files.writeString(file, Files.readString(file).replace("Ada", "Eve"));
        assertThat(house.people().find(ADA)).map(Person::name).contains(Optional.empty());
    }

    @Test
    @Meets("EU GMP Annex 11 12.1 to 12.3")
    void assigningReplacesAllRoles() {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR, Role.OPERATOR), ADA);
        house.people().enrol(BO, "Bo Lind", Set.of(Role.OPERATOR, Role.TRAINER), ADA);
        Person now = house.people().assign(BO, Set.of(Role.REVIEWER), ADA);
        assertThat(now).isEqualTo(new Person(BO, Optional.of("Bo Lind"), Set.of(Role.REVIEWER)));
        assertThat(house.people().find(BO)).contains(now);
        house.index().rebuild(Progress.NONE);
        assertThat(house.people().find(BO)).contains(now);
    }

    @Test
    void theFirstIsAnAdministratorAndTheLastStaysOne() {
        refused(
                () -> house.people().enrol(ADA, "Ada Brook", Set.of(Role.OPERATOR), ADA),
                "The first person must be an administrator, since only administrators enrol others.");
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        refused(
                () -> house.people().assign(ADA, Set.of(Role.REVIEWER), ADA),
                "'p-01' is the last administrator who can act; make another one first.");
        house.people().enrol(BO, "Bo Lind", Set.of(Role.ADMINISTRATOR), ADA);
        assertThat(house.people().assign(ADA, Set.of(Role.REVIEWER), ADA).roles())
                .containsExactly(Role.REVIEWER);
    }

    @Test
    @Meets({"21 CFR 11.100(a)", "21 CFR 11.300(a)"})
    void strangersAndTakenIdsAreRefusedInWords() {
        refused(
                () -> house.people().enrol(BO, "Bo Lind", Set.of(Role.OPERATOR), ADA),
                "Nobody is enrolled here yet, so the first person enrols themself: --as and the new id must be the same,"
                        + " found --as p-01");
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        refused(() -> house.people().enrol(ADA, "Ada Brook", Set.of(), ADA), "The id 'p-01' is taken.");
        refused(() -> house.people().enrol(BO, "Bo Lind", Set.of(), NOBODY), "Nobody here has the id 'p-99'.");
        refused(() -> house.people().enrol(BO, "Bo Lind", Set.of(), BO), "Nobody here has the id 'p-02'.");
        refused(() -> house.people().assign(BO, Set.of(), ADA), "Nobody here has the id 'p-02'.");
        refused(() -> house.people().assign(ADA, Set.of(), NOBODY), "Nobody here has the id 'p-99'.");
        assertThat(folder.resolve("people/p-02")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "Ada\nBrook", "Ada\u0000"})
    void aNameIsOneLine(String name) {
        assertThatThrownBy(() -> house.people().enrol(ADA, name, Set.of(), ADA))
                .isInstanceOf(BadInput.class)
                .hasMessage("name: expected a name of 1 to 120 characters on one line");
    }

    private Entry lastEntry() {
        List<Entry> entries = new ArrayList<>();
        house.journal().read(new StationId("station-1"), 0, entries::add);
        return entries.get(entries.size() - 1);
    }

    private Path nameFile() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("people/p-01"))) {
            List<Path> found = files.toList();
            assertThat(found).hasSize(1);
            return found.get(0);
        }
    }

    private static void refused(ThrowingCallable act, String words) {
        assertThatThrownBy(act).isInstanceOf(Refusal.class).hasMessage(words);
    }
}
