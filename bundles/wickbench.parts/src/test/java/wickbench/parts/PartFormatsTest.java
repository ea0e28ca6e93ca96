package wickbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Version;
import wickbench.api.journal.Draft;
import wickbench.api.part.Brings;
import wickbench.api.part.Health;
import wickbench.api.part.PartSet;
import wickbench.api.part.Standing;
import wickbench.api.person.PersonId;
import wickbench.parts.plan.SetId;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

/** What is written of sets is as the schemas say. */
class PartFormatsTest {
    private static final PersonId ADA = new PersonId("ada");
    private static final SetId EXTRA = new SetId("extra", new Version(1, 2, 3));
    private static final SplittableRandom CHANCE = new SplittableRandom(1);

    @Test
    void entries_are_written_as_their_schemas_say() throws IOException {
        Schemas schemas = Schemas.published();
        for (Draft draft : List.of(
                PartEntries.added(EXTRA, Optional.empty(), ADA, CHANCE),
                PartEntries.removed(EXTRA, ADA, CHANCE),
                PartEntries.refused("set.zip", "part.signature", ADA, CHANCE))) {
            assertThat(schemas.errors(
                            draft.kind() + "-1.schema.json", draft.body().canonical()))
                    .as(draft.kind())
                    .isEmpty();
        }
        assertThat(schemas.errors("part.added-1.schema.json", "{\"name\":\"extra\"}"))
                .isNotEmpty();
    }

    @Test
    void the_list_for_machines_is_as_its_schema_says() throws IOException {
        HeardTerminal heard = HeardTerminal.ofNobody(true);
        new PartsPrint(heard).list(sets());
        assertThat(Schemas.published()
                        .errors("feature-list.schema.json", heard.printed().get(0)))
                .isEmpty();
    }

    @Test
    void what_was_looked_at_is_printed_as_its_schema_says() throws IOException {
        HeardTerminal heard = HeardTerminal.ofNobody(true);
        new PartsPrint(heard).health(List.of(new Health(Health.Of.DISK, Health.State.MINDED, "Make room.")));
        assertThat(Schemas.published()
                        .errors("feature-check.schema.json", heard.printed().get(0)))
                .isEmpty();
    }

    @Test
    void people_read_what_each_set_brings_or_why_it_does_not_run() {
        HeardTerminal heard = HeardTerminal.ofNobody(false);
        new PartsPrint(heard).list(sets());
        assertThat(heard.lines())
                .containsExactly(
                        "set | version | state | brings",
                        "extra | 1.2.3 | added | pages one, two; commands go; gates 1; views 2; words in Spanish",
                        "odd |  | left out | because");
    }

    @Test
    void the_features_of_this_product_are_as_the_schema_says() throws IOException {
        Schemas schemas = Schemas.published();
        try (Stream<Path> files = Files.list(Path.of("../../features"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                String laid = Files.readString(file).replaceAll("\\$\\{[a-z.]+}", "1.0.0");
                assertThat(schemas.errors("feature-1.schema.json", laid))
                        .as("%s", file)
                        .isEmpty();
            }
        }
    }

    private static List<PartSet> sets() {
        return List.of(
                new PartSet(
                        "extra",
                        "1.2.3",
                        "Extra",
                        "More.",
                        List.of("base"),
                        Standing.ADDED,
                        new Brings(List.of("one", "two"), List.of("go"), 1, 2, List.of("es")),
                        Optional.of("site"),
                        Optional.empty()),
                new PartSet(
                        "odd",
                        "",
                        "odd",
                        "",
                        List.of(),
                        Standing.REFUSED,
                        Brings.NOTHING,
                        Optional.empty(),
                        Optional.of("because")));
    }
}
