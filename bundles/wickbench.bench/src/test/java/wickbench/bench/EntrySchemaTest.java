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
import wickbench.api.doubt.Doubt;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.VisualCheck;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Visual;
import wickbench.bench.evidence.Verification;
import wickbench.testing.Schemas;

/** Everything that the bench writes is as the schemas say, one schema a kind. */
class EntrySchemaTest {
    private static final String POSITIVE_ROW = GOOD_ROW.replace("control hook", "control hook ~test");

    /** A kind of another bundle that puts results in doubt. */
    private static final String ELSEWHERE = "plant.closed";

    @TempDir
    private Path folder;

    @Test
    void every_kind_is_written_as_its_schema_says() throws IOException {
        Schemas schemas = Schemas.published();
        Set<String> kinds = new TreeSet<>();
        try (BenchHome home = new BenchHome(folder).withMethods()) {
            live(home);
            home.journal.read(home.journal.stations().get(0), 0, entry -> {
                if (entry.kind().equals(ELSEWHERE)) {
                    return true;
                }
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
                        "method.verification-ended",
                        "method.verified",
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

    /** A decision on a result in doubt has a member that no other has. */
    private static void decide(BenchHome home) {
        UUID negative = home.door
                .record(Sheets.read(HEADER + GOOD_ROW.replace("S1", "S9")).orRefuse(), WRITER)
                .get(0)
                .id();
        Doubt doubt = Doubt.ofMethod("method.withdrawn", new MethodId("nut-swab"), Optional.empty());
        home.journal.append(List.of(new Draft(
                UUID.fromString("0b0e7f4e-0d4c-8a10-9c38-0d4f0a4e2f11"),
                WRITER,
                ELSEWHERE,
                1,
                Doubt.into(Json.object(), List.of(doubt)))));
        home.owed.settle(negative, Owed.DECIDE, "it stands", WRITER, Optional.empty());
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
        decide(home);
        EntryRef verified = home.verifications.verify(
                new Verification(
                        new MethodRef(new MethodId("nut-swab"), 1),
                        Optional.empty(),
                        Optional.of("stainless steel"),
                        Optional.of("alkaline foam"),
                        List.of(),
                        Optional.of("report 7 in the binder")),
                WRITER,
                Optional.empty());
        home.verifications.end(verified, "another foam", WRITER, Optional.empty());
        home.shelf.withdraw(new MethodId("nut-swab"), "the kit is no longer made", WRITER);
    }
}
