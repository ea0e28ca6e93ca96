package wickbench.figures.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.TableText;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

/** Sums that are kept as entries. */
class KeptTest {
    private static final PersonId QA = new PersonId("qa-01");

    @TempDir
    private Path folder;

    private TestHouse house;

    @BeforeEach
    void open() {
        house = new TestHouse(folder.resolve("home"));
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void keeps_what_was_reckoned_and_from_what() throws IOException {
        Path study =
                Files.writeString(folder.resolve("study.csv"), "level;tests;positives\n0,5;20;6\n1,5;20;15\n3;20;19\n");
        Call call = call("detection", study.toString(), "--link", "probit", "--keep", "--about", "Cream, rinse");
        assertThat(call.code()).isZero();
        KeptSums.Kept kept = house.kept().newest(10).get(0);
        assertThat(call.at("kept")).isEqualTo(new Json.Text(kept.entry().toString()));
        assertThat(kept.by()).isEqualTo(QA);
        assertThat(kept.what().about()).contains("Cream, rinse");
        assertThat(kept.what().given().texts()).containsEntry("link", "probit").containsEntry("level", "0.95");
        assertThat(kept.what().given().tables().get("study").lines()).hasSize(4);
        assertThat(kept.what().figures().get("lod95")).contains(call.at("lod95"));
        Reckoned again = Sums.find("detection").orElseThrow().reckon(kept.what().given());
        assertThat(((Reckoned.Done) again).answer().figures())
                .isEqualTo(kept.what().figures());
    }

    @Test
    void what_is_kept_follows_its_schema_for_every_sum() throws IOException {
        Schemas schemas = Schemas.published();
        for (Sum sum : Sums.all()) {
            if (!sum.inputs().isEmpty()) {
                Reckoned.Done done = (Reckoned.Done) sum.reckon(sum.asked(sum.example()));
                Entry entry = house.journal()
                        .entry(house.kept().keep(QA, sum, done, Optional.empty()))
                        .orElseThrow();
                assertThat(schemas.errors(
                                "figure.kept-1.schema.json", entry.body().canonical()))
                        .as(sum.id())
                        .isEmpty();
            }
        }
    }

    @Test
    void no_sentence_stands_in_the_journal() throws IOException {
        String series = IntStream.of(16, 14, 28, 16, 12, 20, 10, 12, 90)
                .mapToObj(Integer::toString)
                .collect(Collectors.joining("\n"));
        call("trend", Files.writeString(folder.resolve("c.csv"), series).toString(), "--chart", "c", "--keep");
        String body = house.kept().newest(1).get(0).what().body().canonical();
        assertThat(body).contains("above-limit").doesNotContain("lies above");
    }

    @Test
    void keeping_again_is_another_entry_and_an_index_made_anew_is_the_same() {
        call("proportion", "1", "20", "--keep");
        call("proportion", "1", "20", "--keep");
        List<KeptSums.Kept> before = house.kept().newest(10);
        assertThat(before).hasSize(2);
        house.index().rebuild(Progress.NONE);
        assertThat(house.kept().newest(10)).isEqualTo(before);
        assertThat(house.kept().newest(1)).containsExactly(before.get(0));
    }

    @Test
    void people_and_machines_read_what_was_kept() {
        HeardTerminal none = HeardTerminal.of(QA, false);
        assertThat(Call.call(house.kept(), none, "kept").lines()).containsExactly("No sum was kept.");
        call("samples", "--prevalence", ".05", "--confidence", ".95", "--keep", "--about", "Bar line");
        String entry = house.kept().newest(1).get(0).entry().toString();
        HeardTerminal list = HeardTerminal.of(QA, false);
        assertThat(Call.call(house.kept(), list, "kept").lines())
                .anyMatch(line -> line.contains(entry) && line.contains("samples") && line.contains("Bar line"));
        HeardTerminal one = HeardTerminal.of(QA, false);
        assertThat(Call.call(house.kept(), one, "kept", entry).lines())
                .contains("Bar line", "n | 59", "prevalence | .05");
        assertThat(call("kept", entry).at("kept.figures.n"))
                .isEqualTo(call("kept").at("0.kept.figures.n"));
    }

    @Test
    void what_is_no_kept_sum_is_told_in_one_line() {
        call("proportion", "1", "20", "--keep");
        assertThat(call("kept", "station-1:0").complaint()).isEqualTo("station-1:0: holds no kept sum");
        assertThat(call("kept", "the first").complaint()).startsWith("ENTRY: expected STATION:NUMBER");
        assertThat(call("proportion", "21", "20", "--keep").code()).isEqualTo(2);
        assertThat(house.kept().newest(10)).hasSize(1);
    }

    @Test
    void too_large_a_table_and_too_long_a_remark_are_not_kept() {
        Sum sum = Sums.find("demand").orElseThrow();
        TableText table = TableText.of("long.csv", "1\n".repeat(20_001));
        Reckoned.Done done = (Reckoned.Done) sum.reckon(new Given(Map.of(), Map.of("demands", table)));
        assertThatThrownBy(() -> house.kept().keep(QA, sum, done, Optional.empty()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("20001 cells");
        assertThat(call("proportion", "1", "2", "--keep", "--about", "x".repeat(501))
                        .complaint())
                .isEqualTo("about: expected at most 500 characters");
        assertThat(house.kept().newest(10)).isEmpty();
    }

    private Call call(String... arguments) {
        return Call.call(house.kept(), HeardTerminal.of(QA, true), arguments);
    }
}
