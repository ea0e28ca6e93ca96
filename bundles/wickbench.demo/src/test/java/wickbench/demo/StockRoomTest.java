package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;
import wickbench.testing.Schemas;

/** What the stock room of the demonstration records, held against the published forms. */
class StockRoomTest {
    private static final Set<String> ABOUT = Set.of("kit", "lot", "fridge", "device");

    @TempDir
    private static Path folder;

    private static List<Entry> entries;

    @BeforeAll
    static void sixteen_weeks() {
        try (House house = new House(folder)) {
            new Generator(house.doors()).make(1, LocalDate.of(2026, 2, 2), LocalDate.of(2026, 5, 25), Progress.NONE);
            entries = house.entries().stream()
                    .filter(entry -> ABOUT.contains(
                            entry.kind().substring(0, entry.kind().indexOf('.'))))
                    .toList();
        }
    }

    @Test
    void every_entry_is_as_its_schema_says() throws Exception {
        Schemas schemas = Schemas.published();
        assertThat(entries)
                .allSatisfy(entry -> assertThat(schemas.errors(
                                entry.kind() + "-1.schema.json", entry.body().canonical()))
                        .as(entry.kind())
                        .isEmpty());
    }

    @Test
    void everything_of_the_chapter_happens() {
        Set<String> kinds = entries.stream().map(Entry::kind).collect(Collectors.toSet());
        assertThat(kinds)
                .contains(
                        "kit.defined",
                        "fridge.registered",
                        "device.calibrated",
                        "fridge.logged",
                        "lot.received",
                        "lot.check-waived",
                        "lot.checked",
                        "lot.opened",
                        "lot.counted",
                        "lot.quarantined",
                        "lot.released",
                        "lot.destroyed");
    }

    @Test
    void what_the_fridge_held_is_decided_and_names_its_log() {
        List<String> logs = ids("fridge.logged");
        List<Entry> held = of("lot.quarantined");
        assertThat(held)
                .isNotEmpty()
                .allSatisfy(entry -> assertThat(logs)
                        .contains(((Json.Text) entry.body().get("about").orElseThrow()).value()));
        assertThat(of("lot.released")).hasSameSizeAs(held);
    }

    private static List<Entry> of(String kind) {
        return entries.stream().filter(entry -> entry.kind().equals(kind)).toList();
    }

    private static List<String> ids(String kind) {
        return of(kind).stream().map(entry -> entry.id().toString()).toList();
    }
}
