package wickbench.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.stations.TwoStations.ADA;
import static wickbench.stations.TwoStations.append;
import static wickbench.stations.TwoStations.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.Refusal;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settlement;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Seen;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

/** Two decisions neither of which had seen the other: found, kept, settled and told. */
class ClashTest {
    @TempDir
    Path root;

    private TwoStations site;
    private House bench;
    private House quality;

    @BeforeEach
    void open() throws IOException {
        site = new TwoStations(root, Duration.ofMinutes(-7));
        bench = site.bench;
        quality = site.quality;
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void decisions_that_had_not_seen_one_another_clash_on_both_stations_and_both_are_kept() {
        site.apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        assertThat(bench.index.clashes()).hasSize(1).isEqualTo(quality.index.clashes());
        Clash clash = bench.index.clash("word:cup").orElseThrow();
        assertThat(clash.decisions()).extracting(ref -> ref.station().value()).containsExactly("bench", "quality");
        assertThat(clash.decisions()).allMatch(ref -> bench.journal.entry(ref).isPresent());
    }

    @Test
    void one_who_had_seen_the_other_decides_anew_and_nothing_clashes() {
        says(bench, "mug");
        site.exchange();
        says(quality, "beaker");
        site.exchange();
        assertThat(bench.index.clashes()).isEmpty();
        assertThat(quality.index.clashes()).isEmpty();
    }

    @Test
    void two_who_say_the_same_do_not_clash() {
        site.apart(() -> {
            says(bench, "mug");
            says(quality, "mug");
        });
        assertThat(bench.index.clashes()).isEmpty();
    }

    @Test
    void a_settlement_ends_it_everywhere_and_two_that_had_not_seen_one_another_clash_again() {
        List<EntryRef> said = new ArrayList<>();
        site.apart(() -> {
            said.add(says(bench, "mug"));
            said.add(says(quality, "beaker"));
        });
        site.apart(() -> {
            desk(bench).settle("word:cup", said.get(0), "it is a mug", ADA, Optional.empty());
            assertThat(desk(bench).open()).isEmpty();
            desk(quality).settle("word:cup", said.get(1), "it is a beaker", ADA, Optional.empty());
        });
        assertThat(bench.index.clashes()).hasSize(1);
        EntryRef mine = bench.index.clash("word:cup").orElseThrow().decisions().get(0);
        desk(bench).settle("word:cup", mine, "we talked", ADA, Optional.empty());
        site.exchange();
        assertThat(bench.index.clashes()).isEmpty();
        assertThat(quality.index.clashes()).isEmpty();
    }

    @Test
    void what_does_not_clash_is_not_settled() {
        EntryRef said = says(bench, "mug");
        assertThatThrownBy(() -> desk(bench).settle("word:cup", said, "why", ADA, Optional.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("clash.none"));
        site.apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        assertThatThrownBy(
                        () -> desk(bench).settle("word:cup", EntryRef.parse("bench:0"), "why", ADA, Optional.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("clash.other"));
    }

    @Test
    void the_command_line_lists_and_settles() {
        site.apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        HeardTerminal listed = HeardTerminal.of(ADA, false);
        assertThat(run(listed, "clashes")).isEqualTo(1);
        assertThat(listed.printed()).anyMatch(line -> line.startsWith("word:cup | quality:"));
        String chosen =
                bench.index.clash("word:cup").orElseThrow().decisions().get(1).toString();
        HeardTerminal settled = HeardTerminal.of(ADA, false);
        assertThat(run(settled, "settle", "word:cup", "--stands", chosen, "--reason", "we talked"))
                .isZero();
        assertThat(run(HeardTerminal.of(ADA, false), "clashes")).isZero();
        HeardTerminal stations = HeardTerminal.of(ADA, false);
        assertThat(run(stations, "list")).isZero();
        assertThat(stations.printed()).anyMatch(line -> line.startsWith("quality | "));
        long seen = bench.index.sightings().stream()
                .filter(each -> each.station().value().equals("quality"))
                .filter(each -> each.other().value().equals("bench"))
                .findFirst()
                .orElseThrow()
                .size();
        assertThat(seen).isPositive();
        assertThat(stations.printed()).anyMatch(line -> line.contains("| bench " + seen + " |"));
        HeardTerminal machine = HeardTerminal.of(ADA, true);
        assertThat(run(machine, "list")).isZero();
        assertThat(String.join("", machine.printed()))
                .contains("\"seen\":[{\"entries\":" + seen + ",\"station\":\"bench\"}]");
    }

    private int run(HeardTerminal terminal, String... args) {
        Object group =
                new StationCommands(bench.journal, bench.journal.others(), bench.index, desk(bench)).commands(terminal);
        return new CommandLine(group)
                .setExecutionExceptionHandler((e, line, parsed) -> {
                    throw e;
                })
                .execute(args);
    }

    @Test
    void what_is_recorded_of_stations_is_as_its_schemas_say() throws IOException {
        site.apart(() -> {
            says(bench, "mug");
            says(quality, "beaker");
        });
        EntryRef stands =
                bench.index.clash("word:cup").orElseThrow().decisions().get(0);
        desk(bench).settle("word:cup", stands, "we talked", ADA, Optional.empty());
        Schemas schemas = Schemas.published();
        List<String> kinds = new ArrayList<>();
        bench.journal.read(bench.journal.stations().get(0), 0, entry -> {
            if (List.of(Seen.KIND, "station.pinned", Settlement.KIND).contains(entry.kind())) {
                kinds.add(entry.kind());
                assertThat(schemas.errors(schema(entry), entry.body().canonical()))
                        .isEmpty();
            }
            return true;
        });
        assertThat(kinds).contains(Seen.KIND, "station.pinned", Settlement.KIND);
        assertThat(schemas.errors(
                        "settings-1.schema.json",
                        Files.readString(root.resolve("bench").resolve("settings.json"))))
                .isEmpty();
    }

    private static String schema(Entry entry) {
        return entry.kind() + "-" + entry.v() + ".schema.json";
    }

    private static EntryRef says(House house, String word) {
        return append(house, Words.decided(Draft.randomId(house.home.chance()), "cup", word));
    }
}
