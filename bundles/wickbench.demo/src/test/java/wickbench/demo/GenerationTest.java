package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;

/** Three weeks over the change to summer time (29 March 2026 in Vienna), with real journal, index, people and bench. */
class GenerationTest {
    private static final LocalDate FROM = LocalDate.of(2026, 3, 16);
    private static final LocalDate UNTIL = LocalDate.of(2026, 4, 6);
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");

    @TempDir
    private static Path folder;

    private static Generator.Made made;
    private static List<Entry> entries;
    private static boolean verified;

    @BeforeAll
    static void three_weeks() {
        try (House house = new House(folder.resolve("first"))) {
            made = make(house, 1);
            entries = house.entries();
            verified = house.journal().verify(Progress.NONE).holds();
        }
    }

    private static Generator.Made make(House house, long seed) {
        return new Generator(house.doors()).make(seed, FROM, UNTIL, Progress.NONE);
    }

    private static List<RecordedReading> readings() {
        return entries.stream()
                .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                .map(House::reading)
                .toList();
    }

    private static Map<String, String> recorded(String name, long seed) throws IOException {
        try (House house = new House(folder.resolve(name))) {
            make(house, seed);
        }
        return files(folder.resolve(name));
    }

    private static Map<String, String> files(Path home) throws IOException {
        Map<String, String> files = new TreeMap<>();
        for (String part : List.of("journal", "people")) {
            try (Stream<Path> found = Files.walk(home.resolve(part))) {
                for (Path file : found.filter(Files::isRegularFile).toList()) {
                    files.put(home.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return files;
    }

    @Test
    void the_same_seed_and_days_give_the_same_bytes_and_another_seed_others() throws IOException {
        Map<String, String> first = files(folder.resolve("first"));

        assertThat(first).isNotEmpty().isEqualTo(recorded("again", 1));
        assertThat(recorded("other", 2)).isNotEqualTo(first);
    }

    @Test
    void the_home_says_that_its_clock_was_simulated_and_its_journal_holds() {
        assertThat(entries.get(0).at()).isEqualTo(Instant.parse("2026-03-16T03:00:00Z"));
        assertThat(entries.get(0).body().canonical()).contains("simulated");
        assertThat(verified).isTrue();
    }

    @Test
    void people_and_methods_come_before_the_first_reading() {
        assertThat(entries.stream().map(Entry::kind).distinct().toList())
                .startsWith(
                        "station.founded",
                        "person.enrolled",
                        "method.issued",
                        "kit.defined",
                        "fridge.registered",
                        "device.calibrated",
                        "lot.received",
                        "lot.check-waived",
                        "figure.kept",
                        "method.verified",
                        "training.terms-set",
                        "training.light-measured",
                        "training.sight-tested",
                        "training.authorised",
                        "reading.recorded");
        assertThat(readings())
                .allSatisfy(reading -> assertThat(reading.verdict().findings())
                        .noneMatch(finding -> finding.rule().startsWith("method.")));
    }

    @Test
    void all_four_outcomes_occur_and_are_counted() {
        for (Outcome outcome : Outcome.values()) {
            assertThat(readings().stream().filter(each -> each.verdict().outcome() == outcome))
                    .hasSize(made.outcomes().of(outcome))
                    .isNotEmpty();
        }
    }

    @Test
    void every_run_is_recorded_minutes_after_its_last_strip_was_read() {
        Instant before = Instant.EPOCH;
        for (Entry entry : entries) {
            assertThat(entry.at()).isAfterOrEqualTo(before);
            before = entry.at();
        }
        assertThat(entries.stream().filter(entry -> entry.kind().equals(RecordedReading.KIND)))
                .allSatisfy(entry -> {
                    Instant read = House.reading(entry).reading().times().read().orElseThrow();
                    assertThat(Duration.between(read, entry.at()))
                            .isBetween(Duration.ofMinutes(2), Duration.ofHours(2));
                });
    }

    @Test
    void shifts_keep_the_wall_clock_over_the_change_to_summer_time() {
        assertThat(entries).extracting(Entry::offset).contains(ZoneOffset.ofHours(1), ZoneOffset.ofHours(2));
        assertThat(readings())
                .allSatisfy(each -> assertThat(LocalTime.ofInstant(
                                each.reading().times().started().orElseThrow(), ZONE))
                        .isAfter(LocalTime.of(6, 20)));
        assertThat(readings())
                .allSatisfy(each -> assertThat(DemoFiles.plant()
                                .works(LocalDate.ofInstant(
                                        each.reading().times().started().orElseThrow(), ZONE)))
                        .isTrue());
    }

    @Test
    void every_run_has_its_blank_and_its_low_positive() {
        assertThat(of(RunControl.BLANK)).isPositive().isEqualTo(of(RunControl.LOW_POSITIVE));
        assertThat(of(RunControl.BLANK)).isGreaterThanOrEqualTo(made.outcomes().runs());
    }

    private static long of(RunControl control) {
        return readings().stream()
                .filter(each -> each.reading()
                        .sample()
                        .control()
                        .filter(control::equals)
                        .isPresent())
                .count();
    }

    @Test
    void hazelnut_stays_at_two_points_of_line_2_until_the_procedure_changes() {
        LocalDate change = StubbornChangeover.changes(made.span());

        assertThat(stubborn(change, true))
                .hasSizeGreaterThanOrEqualTo(8)
                .filteredOn(Boolean::booleanValue)
                .hasSizeGreaterThan(2);
        assertThat(stubborn(change, false))
                .hasSizeGreaterThanOrEqualTo(4)
                .filteredOn(Boolean::booleanValue)
                .isEmpty();
        assertThat(readings())
                .extracting(each -> each.reading().sample().reasonText().orElse(""))
                .contains("CP-2 edition 3", "CP-2 edition 4", "CP-1 edition 3")
                .doesNotContain("CP-1 edition 4");
    }

    private static List<Boolean> stubborn(LocalDate change, boolean before) {
        return readings().stream()
                .filter(each -> StubbornChangeover.PLACES.contains(
                        each.reading().sample().place()))
                .filter(each -> each.reading()
                        .sample()
                        .reason()
                        .filter(Reason.CHANGEOVER::equals)
                        .isPresent())
                .filter(each -> each.reading().method().value().equals("hazelnut-swab-dry"))
                .filter(each ->
                        LocalDate.ofInstant(each.reading().times().started().orElseThrow(), ZONE)
                                        .isBefore(change)
                                == before)
                .map(each -> each.verdict().outcome().positive())
                .toList();
    }

    @Test
    void a_positive_after_cleaning_is_cleaned_again_and_tested_with_its_neighbours() {
        List<RecordedReading> again = readings().stream()
                .filter(each -> each.reading()
                        .sample()
                        .reason()
                        .filter(Reason.AFTER_CLEANING::equals)
                        .isPresent())
                .toList();

        assertThat(again)
                .extracting(each -> each.reading().sample().place())
                .contains("L2 depositor nozzles", "L2 transfer valve", "L2 depositor tray", "L2 pump seal");
    }

    @Test
    void an_amount_above_the_range_is_diluted_ten_and_a_hundred_times() {
        RecordedReading above = readings().stream()
                .filter(each -> each.verdict().outcome() == Outcome.POSITIVE_ABOVE_RANGE)
                .findFirst()
                .orElseThrow();

        assertThat(readings())
                .filteredOn(each -> each.reading()
                        .sample()
                        .code()
                        .equals(above.reading().sample().code()))
                .extracting(each -> each.reading().sample().dilution().intValueExact())
                .contains(1, 10, 100);
    }
}
