package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.ADAS;
import static wickbench.people.TestHouse.BO;
import static wickbench.people.TestHouse.CY;
import static wickbench.people.TestHouse.ONCE;
import static wickbench.people.TestHouse.adas;
import static wickbench.people.TestHouse.bos;
import static wickbench.people.TestHouse.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Recovery.Witness;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.person.Role;
import wickbench.people.profile.Profiled;
import wickbench.testing.Schemas;

/** Everything that people and profile write is as the schemas say, one schema a kind. */
class EntrySchemaTest {
    @TempDir
    Path folder;

    @Test
    void everyKindIsWrittenAsItsSchemaSays() throws IOException {
        Schemas schemas = Schemas.published();
        Set<String> kinds = new TreeSet<>();
        try (TestHouse house = new TestHouse(folder)) {
            live(house);
            for (Entry entry : house.entries()) {
                String file = entry.kind() + "-1.schema.json";
                if (Stream.of("person.", "profile.", "recovery.").anyMatch(entry.kind()::startsWith)) {
                    kinds.add(entry.kind());
                    assertThat(schemas.errors(file, entry.body().canonical()))
                            .as("%s %s", entry.ref(), entry.kind())
                            .isEmpty();
                }
            }
        }
        try (Stream<Path> files = Files.walk(folder.resolve("people"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(schemas.errors("person-name.schema.json", Files.readString(file)))
                        .as("%s", file)
                        .isEmpty();
            }
        }
        assertThat(kinds)
                .containsExactly(
                        "person.assigned",
                        "person.badge-set",
                        "person.enrolled",
                        "person.forgotten",
                        "person.passphrase-set",
                        "person.pin-set",
                        "person.recovered",
                        "person.sign-in-failed",
                        "person.signed-in",
                        "profile.issued",
                        "recovery.sealed");
    }

    @Test
    void theSchemaSeesWhatIsWrong() throws IOException {
        assertThat(Schemas.published().errors("person.forgotten-1.schema.json", "{\"person\":\"Ada Brook\"}"))
                .isNotEmpty();
        assertThat(Schemas.published().errors("profile-1.schema.json", "{\"plant\":\"x\"}"))
                .isNotEmpty();
    }

    private static void live(TestHouse house) {
        house.locked(Role.OPERATOR);
        house.credentials().pin(BO, typed("4711"), ADA);
        house.credentials().badge(BO, "0815", ADA);
        try {
            house.signIn().open(ADA, typed("something else"));
        } catch (Refusal expected) {
            house.signIn().open(ADA, typed(ADAS));
        }
        house.people().enrol(CY, "Cy Ferran", Set.of(Role.REVIEWER), ADA);
        house.people().assign(CY, Set.of(Role.TRAINER), ADA);
        house.credentials().reset(CY, typed(ONCE), adas(), Optional.empty());
        house.profiles().issue(Profiled.plain(), ADA, Optional.of(typed(ADAS)));
        house.pass(Duration.ofDays(1200));
        house.recovery().byWitness(CY, typed(ONCE), bos(), "everybody else left");
        house.credentials().reset(CY, typed(ONCE), adas(), Optional.of(bos()));
        String code = house.recovery().seal(adas());
        house.recovery()
                .byCode(
                        CY,
                        typed(ONCE),
                        typed(code),
                        Optional.of(new Witness(BO, Optional.of(bos().passphrase()))),
                        "lost");
        house.pass(Duration.ofDays(1200));
        house.credentials().forget(CY, ADA, Optional.of(typed(ADAS)));
    }
}
