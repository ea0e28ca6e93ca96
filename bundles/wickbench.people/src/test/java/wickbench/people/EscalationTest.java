package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.BO;
import static wickbench.people.TestHouse.BOS;
import static wickbench.people.TestHouse.CY;
import static wickbench.people.TestHouse.typed;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Act;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.people.profile.Profiled;
import wickbench.reading.MethodJson;
import wickbench.testing.Meets;

/** An operator calls every door of weight directly, with and without signing (21 CFR 11.10(g), ASVS 5.0 V8). */
class EscalationTest {
    private static final Set<Role> BOS_ROLES = Set.of(Role.OPERATOR, Role.TRAINER, Role.STOCK_KEEPER, Role.RELEASER);
    private static final Path DEMO = Path.of("..", "..", "demo");

    @TempDir
    Path folder;

    private TestHouse house;
    private Method method;
    private Method next;
    private Kept kept;

    @BeforeEach
    void open() throws IOException {
        house = new TestHouse(folder).locked(BOS_ROLES.toArray(Role[]::new));
        method = method("hazelnut-swab-dry.json");
        next = method("milk-rinse.json");
        house.methods().issue(method, ADA, Optional.empty());
        kept = house.readings().record(firstOf("run-sheet.csv"), BO).get(0);
        house.people().enrol(CY, "Cy Ferran", Set.of(Role.OPERATOR), ADA);
        house.signIn().open(BO, typed(BOS));
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    @Meets("EU GMP Annex 11 2")
    void nothingPassesAndNothingIsAppended() {
        for (Optional<Passphrase> passphrase : List.of(Optional.<Passphrase>empty(), Optional.of(typed(BOS)))) {
            Map<Act, Runnable> doors = doors(BO, passphrase);
            assertThat(doors.keySet()).isEqualTo(ofSomebodyElse());
            long before = house.entries().size();
            doors.forEach((act, door) -> assertThatThrownBy(door::run)
                    .as("%s", act)
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("people.role")));
            assertThat(house.entries()).hasSize((int) before);
        }
    }

    @Test
    @Meets("ALCOA+ attributable")
    void nobodyPassesByNamingTheAdministratorWithoutSittingThere() {
        house.signIn().close(ADA);
        doors(ADA, Optional.empty())
                .forEach((act, door) -> assertThatThrownBy(door::run)
                        .as("%s", act)
                        .isInstanceOfSatisfying(
                                Refusal.class,
                                refusal -> assertThat(refusal.code())
                                        .isIn("sign-in.needed", "sign.needed", "people.role", "sign-in.wrong")));
    }

    @Test
    @Meets({"21 CFR 11.10(g)", "EU GMP Annex 11 12.1 to 12.3"})
    void noActOfARoleIsAuthorisedWhicheverDoorAsks() {
        List<Act> privileged =
                Stream.of(Act.values()).filter(act -> !act.roles().isEmpty()).toList();
        assertThat(privileged).hasSizeGreaterThan(ofSomebodyElse().size());
        long before = house.entries().size();
        int passed = 0;
        for (Act act : privileged) {
            boolean bos = act.roles().stream().anyMatch(BOS_ROLES::contains);
            for (Optional<Passphrase> passphrase : List.of(Optional.<Passphrase>empty(), Optional.of(typed(BOS)))) {
                passed += !bos && authorised(act, passphrase) ? 1 : 0;
            }
        }
        assertThat(passed).as("of %s", privileged.size()).isZero();
        assertThat(house.entries()).hasSize((int) before);
    }

    private boolean authorised(Act act, Optional<Passphrase> passphrase) {
        Draft draft = new Draft(UUID.randomUUID(), BO, "some.act", 1, Json.object());
        try {
            house.authority().authorise(act, draft, passphrase);
            return true;
        } catch (Refusal refused) {
            assertThat(refused.code()).as("%s", act).isEqualTo("people.role");
            return false;
        }
    }

    @Test
    void whoeverSitsAtTheDeskDoesNotSitInACommandOfAnotherProgram() {
        house.signIn().open(ADA, typed(TestHouse.ADAS));
        house.signIn().apart(() -> {
            assertThat(house.authority().ask(ADA, Act.ISSUE_METHOD))
                    .isInstanceOfSatisfying(
                            Permission.Denied.class,
                            denied -> assertThat(denied.code()).isEqualTo("sign-in.needed"));
            assertThatThrownBy(() -> house.methods().issue(next, ADA, Optional.empty()))
                    .isInstanceOf(Refusal.class);
            house.signIn().close(BO);
            house.signIn().open(BO, typed(BOS));
            assertThat(house.signIn().sits(BO)).isTrue();
            return 0;
        });
        assertThat(house.signIn().sits(ADA)).isTrue();
        assertThat(house.signIn().sits(BO)).isFalse();
    }

    @Test
    void theOneWhoMayPasses() {
        house.signIn().open(ADA, typed(TestHouse.ADAS));
        assertThat(house.authority().ask(ADA, Act.ISSUE_METHOD)).isEqualTo(new Permission.Allowed());
        assertThat(house.authority().ask(BO, Act.ISSUE_METHOD))
                .isEqualTo(new Permission.Denied(
                        "people.role",
                        "'p-02' may not issue a method: that asks for the role reviewer or administrator."));
        assertThat(house.methods().issue(next, ADA, Optional.empty()).signed()).isFalse();
    }

    @Test
    @Meets("21 CFR 11.10(g)")
    void aRoleWrittenIntoTheIndexBySqlIsNone() {
        sql("insert into \"people\".person_role (person, role, station, seq) select person, 'administrator',"
                + " station, seq from \"people\".person_role where person = 'p-02' and role = 'operator'");
        assertThat(house.people().find(BO).orElseThrow().roles()).contains(Role.ADMINISTRATOR);
        house.signIn().open(BO, typed(BOS));
        assertThatThrownBy(() -> house.people().enrol(new PersonId("p-09"), "Eve", Set.of(), BO))
                .isInstanceOf(Refusal.class)
                .hasMessage("'p-02' may not enrol people: that asks for the role administrator.");
    }

    @Test
    void roleRowsUpdatedBySqlOpenNoDoor() {
        Map<Role, String> forgeries = Map.of(
                Role.REVIEWER,
                "update \"people\".person_role set role = 'reviewer' where person = 'p-02' and role = 'trainer'",
                Role.ADMINISTRATOR,
                "update \"people\".person_role set person = 'p-02' where person = 'p-01'");
        forgeries.forEach((role, forged) -> {
            sql(forged);
            assertThat(house.people().find(BO).orElseThrow().roles()).contains(role);
            house.signIn().open(BO, typed(BOS));
            long before = house.entries().size();
            doors(BO, Optional.of(typed(BOS)))
                    .forEach((act, door) -> assertThatThrownBy(door::run)
                            .as("%s after %s", act, forged)
                            .isInstanceOfSatisfying(
                                    Refusal.class,
                                    refusal -> assertThat(refusal.code()).isEqualTo("people.role")));
            assertThat(house.entries()).hasSize((int) before);
        });
    }

    @Test
    void aFileOfOnesOwnMakingIsNone() {
        PersonFile forged = PersonFile.named("Ada Brook")
                .withPassphrase(
                        Argon2id.hash(typed("known to bo as well"), HashCost.LEAST, new java.security.SecureRandom()));
        String hash = house.roster().files().keep(ADA, forged).hex();
        sql("update \"people\".person set file = '" + hash + "' where id = 'p-01'");
        assertThatThrownBy(() -> house.signIn().open(ADA, typed("known to bo as well")))
                .isInstanceOf(Refusal.class);
    }

    /** Reads the first strip of a sheet. */
    private List<Reading> firstOf(String sheet) throws IOException {
        List<String> lines = Files.readAllLines(DEMO.resolve(sheet)).subList(0, 2);
        byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        return house.sheets().read(sheet, new ByteArrayInputStream(bytes)).orRefuse();
    }

    @Test
    void aRoleWrittenIntoTheIndexBesideItsCheckSumsIsNotEvenShown() {
        changed("update \"people\".person_role set role = 'reviewer' where person = 'p-02' and role = 'trainer'");
        reopen();
        assertThat(house.people().find(BO).orElseThrow().roles())
                .contains(Role.TRAINER)
                .doesNotContain(Role.REVIEWER);
    }

    /** Changes the index with a tool of one's own while the program is closed, and takes away what would betray it. */
    private void sql(String statement) {
        changed(statement);
        try (Stream<Path> files = Files.walk(folder.resolve("index"))) {
            for (Path sums : files.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().endsWith(".mv.db"))
                    .toList()) {
                Files.delete(sums);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        reopen();
    }

    private void reopen() {
        house = new TestHouse(folder, TestHouse.START.plusSeconds(60));
    }

    private void changed(String statement) {
        house.close();
        try (Connection own = DriverManager.getConnection("jdbc:h2:async:" + database());
                Statement change = own.createStatement()) {
            assertThat(change.executeUpdate(statement)).isEqualTo(1);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private String database() {
        try (Stream<Path> files = Files.walk(folder.resolve("index"))) {
            String file = files.map(Path::toString)
                    .filter(name -> name.endsWith(".mv.db"))
                    .findFirst()
                    .orElseThrow();
            return file.substring(0, file.length() - ".mv.db".length());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<Act, Runnable> doors(PersonId by, Optional<Passphrase> passphrase) {
        Map<Act, Runnable> doors = new EnumMap<>(Act.class);
        doors.put(Act.ENROL_PERSON, () -> house.people().enrol(new PersonId("p-09"), "Eve", Set.of(), by));
        doors.put(Act.ASSIGN_ROLES, () -> house.people().assign(by, Set.of(Role.ADMINISTRATOR), by));
        doors.put(Act.SET_BENCH_KEY, () -> house.credentials().pin(CY, typed("1234"), by));
        doors.put(
                Act.RESET_PASSPHRASE,
                () -> house.credentials()
                        .reset(CY, typed("come in and choose"), new Signing(by, typed(BOS)), Optional.empty()));
        doors.put(Act.FORGET_PERSON, () -> house.credentials().forget(CY, by, passphrase));
        doors.put(Act.SEAL_RECOVERY, () -> house.recovery().seal(new Signing(by, typed(BOS))));
        doors.put(Act.ISSUE_PROFILE, () -> house.profiles().issue(Profiled.plain(), by, passphrase));
        doors.put(Act.ISSUE_METHOD, () -> house.methods().issue(next, by, passphrase));
        doors.put(
                Act.WITHDRAW_METHOD, () -> house.methods().withdraw(method.ref().id(), "because", by, passphrase));
        doors.put(
                Act.CORRECT_READING,
                () -> house.readings().correct(kept.id(), kept.reading().reading(), "because", by, passphrase));
        return doors;
    }

    /** All but what everybody may do in their own name, and what stock room, plant and bench ask for behind doors of their own. */
    private static Set<Act> ofSomebodyElse() {
        return EnumSet.complementOf(EnumSet.of(
                Act.WITNESS,
                Act.CORRECT_OWN_READING,
                Act.CHANGE_PARTS,
                Act.SETTLE_OWED,
                Act.SETTLE_CLASH,
                Act.REVIEW_READING,
                Act.DECIDE_ACTION,
                Act.PLAN_RELEASE,
                Act.VERIFY_METHOD,
                Act.BASE_TREND,
                Act.RELEASE,
                Act.KEEP_PLANT,
                Act.VALIDATE_CLEAN,
                Act.EXCUSE_DUE,
                Act.KEEP_STOCK,
                Act.USE_STOCK,
                Act.CHECK_LOT,
                Act.DECIDE_STORAGE,
                Act.AUTHORISE_OPERATOR,
                Act.SUSPEND_OPERATOR,
                Act.KEEP_TRAINING,
                Act.SCORE_ROUND,
                Act.ACKNOWLEDGE,
                Act.CALL_STRIPS));
    }

    private static Method method(String file) throws IOException {
        return MethodJson.read(file, Files.readString(DEMO.resolve("methods").resolve(file)))
                .orRefuse();
    }
}
