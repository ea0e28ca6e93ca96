package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.doubt.Doubt;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.api.reading.RecordedReading;
import wickbench.testing.Schemas;

/** What the training book of the demonstration records, held against the published forms and against itself. */
class TrainingYearTest {
    private static final LocalDate FROM = LocalDate.of(2026, 2, 2);
    private static final LocalDate UNTIL = LocalDate.of(2026, 5, 25);

    @TempDir
    private static Path folder;

    private static List<Entry> all;
    private static List<Entry> entries;
    private static Span span;
    private static PersonId reader;

    @BeforeAll
    static void sixteen_weeks() {
        Plant plant = DemoFiles.plant();
        span = new Span(FROM, UNTIL, plant.zone());
        reader = FaintLineReader.who(plant);
        try (House house = new House(folder)) {
            new Generator(house.doors()).make(1, FROM, UNTIL, Progress.NONE);
            all = house.entries();
            entries = all.stream()
                    .filter(entry ->
                            entry.kind().startsWith("training.") || entry.kind().startsWith("round."))
                    .toList();
        }
    }

    @Test
    void every_entry_is_as_its_schema_says() throws Exception {
        Schemas schemas = Schemas.published();
        assertThat(entries)
                .isNotEmpty()
                .allSatisfy(entry -> assertThat(schemas.errors(
                                entry.kind() + "-1.schema.json", entry.body().canonical()))
                        .as(entry.kind())
                        .isEmpty());
    }

    @Test
    void five_rounds_are_opened_called_by_all_and_scored_and_their_keys_are_the_ones_committed_to() {
        List<Entry> opened = of("round.opened");
        List<Entry> closed = of("round.closed");
        assertThat(opened).hasSize(5);
        assertThat(of("round.scored")).hasSize(5);
        assertThat(of("round.called")).hasSize(5 * 9);
        for (int i = 0; i < opened.size(); i++) {
            Json key = closed.get(i).body().get("key").orElseThrow();
            assertThat(opened.get(i).body().get("commitment"))
                    .contains(new Json.Text(Hash.ofContent(key.canonical()).hex()));
        }
    }

    @Test
    void one_fails_the_first_round_with_faint_lines_is_suspended_and_restored_after_another() {
        List<Boolean> passed = of("round.scored").stream()
                .map(entry -> entry.body().canonical().contains("\"passed\":true,\"reader\":\"" + reader + "\""))
                .toList();
        assertThat(passed).containsExactly(true, true, false, true, true);
        assertThat(of("training.suspended")).hasSize(1);
        assertThat(of("training.restored")).hasSize(DemoFiles.plant().methods().size());
        Set<String> methods = of("training.restored").stream()
                .map(entry ->
                        new MethodId(((Json.Text) entry.body().get("method").orElseThrow()).value()).value())
                .collect(Collectors.toSet());
        assertThat(methods).hasSize(DemoFiles.plant().methods().size());
    }

    @Test
    void what_is_in_doubt_is_decided_on_whole() {
        Entry suspended = of("training.suspended").get(0);
        Doubt doubt = Doubt.in("test", suspended.body()).get(0);
        List<String> touched = new ArrayList<>();
        for (Entry entry : all) {
            if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
                RecordedReading recorded = House.reading(entry);
                if (negative(recorded) && touches(doubt, recorded)) {
                    touched.add(entry.id().toString());
                }
            }
        }
        List<String> decided = all.stream()
                .filter(entry -> entry.kind().equals("owed.settled"))
                .filter(entry -> entry.body()
                        .get("owes")
                        .equals(Optional.of(new Json.Text(suspended.id().toString()))))
                .flatMap(entry -> ((Json.Arr) entry.body().get("about").orElseThrow()).items().stream())
                .map(item -> ((Json.Text) item).value())
                .toList();
        assertThat(touched).isNotEmpty();
        assertThat(decided).containsExactlyInAnyOrderElementsOf(touched);
    }

    private static boolean negative(RecordedReading recorded) {
        return recorded.verdict().outcome() == wickbench.api.reading.Outcome.NEGATIVE
                && recorded.reading().sample().control().isEmpty();
    }

    private static boolean touches(Doubt doubt, RecordedReading recorded) {
        return doubt.touches(
                recorded.reading().lot(),
                recorded.reading().method(),
                recorded.reading().operator(),
                recorded.reading().times().started().orElseThrow());
    }

    @Test
    void while_suspended_another_reads_each_strip_and_nobody_observes_otherwise() {
        var from = span.startOf(FaintLineReader.suspendedOn(span));
        var to = span.startOf(FaintLineReader.restoredOn(span));
        assertThat(all.stream()
                        .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                        .map(House::reading)
                        .filter(recorded -> recorded.reading().operator().equals(reader)))
                .isNotEmpty()
                .allSatisfy(recorded -> {
                    var started = recorded.reading().times().started().orElseThrow();
                    boolean within = !started.isBefore(from) && started.isBefore(to);
                    assertThat(recorded.reading().observer().isPresent()).isEqualTo(within);
                });
    }

    private static List<Entry> of(String kind) {
        return entries.stream().filter(entry -> entry.kind().equals(kind)).toList();
    }
}
