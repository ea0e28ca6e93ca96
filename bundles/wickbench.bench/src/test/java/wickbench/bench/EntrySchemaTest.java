package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.bench.BenchHome.WRITER;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.MethodId;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.VisualCheck;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Visual;
import wickbench.testing.Schemas;

/** Everything that the bench writes is as the schemas say, one schema a kind. */
class EntrySchemaTest {
    private static final String POSITIVE_ROW = GOOD_ROW.replace("control hook", "control hook ~test");

    @TempDir
    private Path folder;

    @Test
    void every_kind_is_written_as_its_schema_says() throws IOException {
        Schemas schemas = Schemas.published();
        Set<String> kinds = new TreeSet<>();
        try (BenchHome home = new BenchHome(folder).withMethods()) {
            live(home);
            home.journal.read(home.journal.stations().get(0), 0, entry -> {
                kinds.add(entry.kind());
                assertThat(schemas.errors(
                                entry.kind() + "-1.schema.json", entry.body().canonical()))
                        .as("%s %s", entry.ref(), entry.kind())
                        .isEmpty();
                return true;
            });
        }
        assertThat(kinds)
                .containsExactly(
                        "clean.recorded",
                        "method.issued",
                        "method.withdrawn",
                        "owed.settled",
                        "reading.corrected",
                        "reading.recorded",
                        "retest.planned",
                        "station.founded",
                        "visual.checked");
    }

    @Test
    void the_schema_sees_what_is_wrong() throws IOException {
        Schemas schemas = Schemas.published();

        assertThat(schemas.errors("method.issued-1.schema.json", "{\"method\":{}}"))
                .isNotEmpty();
        assertThat(schemas.errors("method.withdrawn-1.schema.json", "{\"method\":\"nut-swab\"}"))
                .isNotEmpty();
    }

    private static void live(BenchHome home) {
        UUID id = home.door
                .record(Sheets.read(HEADER + GOOD_ROW).orRefuse(), WRITER)
                .get(0)
                .id();
        home.door.correct(
                id, Sheets.read(HEADER + POSITIVE_ROW).orRefuse().get(0), "the faint line was overlooked", WRITER);
        Instant later = Instant.parse("2026-03-02T09:00:00Z");
        home.owed.cleaned(new CleanDone("filler", Optional.of("Line 2"), "foam", WRITER, later), WRITER);
        home.owed.looked(new VisualCheck("filler", Optional.empty(), Visual.SOILED, WRITER, later), WRITER);
        home.owed.neighbours(id, List.of("hopper"), WRITER);
        home.owed.settle(id, Owed.HOLD, "batch destroyed", WRITER, Optional.empty());
        home.shelf.withdraw(new MethodId("nut-swab"), "the kit is no longer made", WRITER);
    }
}
