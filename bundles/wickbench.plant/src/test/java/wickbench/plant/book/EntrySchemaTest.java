package wickbench.plant.book;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.plant.book.PlantHome.QUALITY;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Visual;
import wickbench.plant.Retired;
import wickbench.plant.Thing;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.programme.Maintained;
import wickbench.plant.site.Sampling;
import wickbench.testing.Schemas;

/** Every kind of entry that this bundle writes, held against its published schema. */
class EntrySchemaTest {
    private static final Set<String> KINDS = Set.of(
            "line.stated",
            "point.stated",
            "product.stated",
            "cleaning.stated",
            "rule.stated",
            "plant.retired",
            "floor.pictured",
            "point.placed",
            "changeover.made",
            "maintenance.done",
            "due.excused",
            "validation.opened",
            "validation.ran",
            "validation.confirmed",
            "validation.lapsed");

    /** The smallest PNG: one grey pixel. */
    private static final String PIXEL =
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==";

    @TempDir
    private Path folder;

    @Test
    void every_entry_is_as_its_schema_says() throws Exception {
        Schemas schemas = Schemas.published();
        try (PlantHome home = new PlantHome(folder.resolve("home")).furnished()) {
            live(home);
            List<Entry> entries = new ArrayList<>();
            home.journal.read(home.journal.stations().get(0), 0, entry -> {
                entries.add(entry);
                return true;
            });
            Set<String> kinds = new TreeSet<>();
            for (Entry entry : entries) {
                if (KINDS.contains(entry.kind())) {
                    kinds.add(entry.kind());
                    assertThat(schemas.errors(
                                    entry.kind() + "-1.schema.json",
                                    entry.body().canonical()))
                            .as(entry.kind())
                            .isEmpty();
                }
            }
            assertThat(kinds).isEqualTo(new TreeSet<>(KINDS));
        }
        assertThat(schemas.errors("plant-1.schema.json", Files.readString(PlantHome.millFile())))
                .isEmpty();
    }

    /** Lets everything happen once. */
    private void live(PlantHome home) throws Exception {
        Sampling seal = new Sampling("L2 pump seal", new MethodId("milk-swab-wet"));
        home.keeping.open(new Series("CP-2n", "milk", List.of("hardest-soil"), Set.of("milk"), List.of(seal)), QUALITY);
        for (int i = 0; i < Series.PASSES; i++) {
            Instant cleaned = home.book.now();
            UUID read = home.read(seal.place(), seal.method().value(), false);
            home.keeping.ran(new SeriesRun("CP-2n", Visual.CLEAN, List.of(read), cleaned), QUALITY);
        }
        home.keeping.confirm(new Confirmed("CP-2n", LocalDate.parse("2027-03-01"), "three"), QUALITY);
        home.keeping.lapse(new Changed("CP-2n", "new nozzle"), QUALITY);
        home.keeping.changed(new ChangeMade("L2", "milk", "plain", home.book.now()), QUALITY);
        home.keeping.maintained(new Maintained("L2", "pump opened", home.book.now()), QUALITY);
        home.after(Duration.ofDays(20));
        home.keeping.excuse("L2-weekly", Instant.parse("2026-03-08T23:00:00Z"), "stood still", QUALITY);
        Path picture = Files.write(
                folder.resolve("floor.png"), java.util.Base64.getDecoder().decode(PIXEL));
        home.keeping.picture(picture, QUALITY);
        home.keeping.place("L2 pump seal", BigDecimal.ZERO, BigDecimal.ZERO, QUALITY);
        home.keeping.retire(new Retired(Thing.RULE, "L2-weekly", "no more"), QUALITY);
    }
}
