package wickbench.report.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.method.Seen;
import wickbench.api.progress.Progress;
import wickbench.api.reading.RecordedReading;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.ReportSource;
import wickbench.api.report.Section;
import wickbench.reading.RecordedReadingJson;
import wickbench.report.Plant;
import wickbench.report.Poppler;
import wickbench.report.pdf.PdfPrinter;
import wickbench.report.sheet.CsvPrinter;
import wickbench.report.sheet.JsonLinesPrinter;
import wickbench.report.sheet.XlsxPrinter;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;

/** {@code report result}, read back by poppler. */
class ReportCommandTest {

    @TempDir
    Path folder;

    @Test
    @Meets({"21 CFR 117.305(e)", "21 CFR 117.320", "ISO/IEC 17025 7.8.2"})
    void a_negative_prints_with_its_reasons_and_its_seal() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry entry = plant.record(Plant.reading("W-0117", Seen.NOT_SEEN, Seen.SEEN, 6));
            Poppler pdf = printed(plant, entry.id().toString(), "negative.pdf");
            String text = pdf.text();
            assertThat(text)
                    .contains("Negative", "Not detected by this method in this sample.")
                    .contains("W-0117", "Depositor, nozzle plate", "Line 4", "Oat bar 26-090", "after cleaning")
                    .contains("hazelnut-swab v3", "HZ-4471", "0.5 µg/mL", "95 %")
                    .contains("µg/100 cm²")
                    .contains("2026-03-31 08:05:00 +02:00", "6 min")
                    .contains("label expiry: 2026-09-30", "not checked")
                    .contains("control line: seen", "test line: not seen", "hook line: seen")
                    .contains(entry.leaf().hex(), entry.ref().toString())
                    .contains("never \"free of\"", "Page 1 of " + pdf.pages());
            // a negative is never free of, beyond the sentence that says so
            assertThat(text.replace("never \"free of\"", "").toLowerCase()).doesNotContain("free of", "allergen-free");
            pdf.page(1);
            pdf.page(2);
            assertThat(plant.journal.verify(Progress.NONE).holds()).isTrue();
        }
    }

    @Test
    void the_code_at_the_foot_is_the_checkpoint_over_the_entry() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry entry = plant.record(Plant.reading("W-0118", Seen.SEEN, Seen.SEEN, 6));
            Poppler pdf = printed(plant, entry.ref().toString(), "positive.pdf");
            var checkpoint = plant.journal.checkpoint().orElseThrow();
            assertThat(pdf.text()).contains("Positive", checkpoint.root().hex());
            assertThat(pdf.code(1)).isEqualTo(checkpoint.note());
            assertThat(pdf.code(pdf.pages())).isEqualTo(checkpoint.note());
            assertThat(checkpoint.size()).isGreaterThan(entry.ref().seq());
        }
    }

    @Test
    @Meets("EU GMP Annex 11 8.1")
    void words_are_embedded_and_nothing_is_a_picture() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry entry = plant.record(Plant.reading("W-0119", Seen.FAINT, Seen.NOT_SEEN, 6));
            Poppler pdf = printed(plant, entry.id().toString(), "above-range.pdf");
            List<String> fonts = pdf.fonts().lines().skip(2).toList();
            assertThat(fonts)
                    .isNotEmpty()
                    .allMatch(line -> line.contains("DejaVu") && line.matches(".*\\byes yes yes\\b.*"));
            assertThat(pdf.images().lines().skip(2)).isEmpty();
            assertThat(pdf.text()).contains("Positive, above range", "test line: faint", "hook line: not seen");
            pdf.page(1);
        }
    }

    @Test
    @Meets({"EU GMP Annex 11 8.2", "ISO/IEC 17025 7.8.8"})
    void a_correction_prints_as_what_counts_now_with_the_first_statement_beside_it() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry first = plant.record(Plant.reading("W-0120", Seen.NOT_SEEN, Seen.SEEN, 6));
            Entry second = plant.correct(
                    first.id(), "The second reader saw the line.", Plant.reading("W-0120", Seen.FAINT, Seen.SEEN, 6));
            plant.append(
                    "review.decided", Json.object().with("result", first.id().toString()));
            for (String id : List.of(first.id().toString(), second.ref().toString())) {
                String text = printed(plant, id, "corrected.pdf").text();
                assertThat(text)
                        .contains("Corrected", "The second reader saw the line.")
                        .contains("reading.recorded", "reading.corrected", "review.decided")
                        .contains("Negative", "Positive")
                        .contains("entries " + first.ref().seq() + " to "
                                + (second.ref().seq() + 1));
            }
        }
    }

    @Test
    @Meets("21 CFR 117.305(f)")
    void a_signature_prints_with_name_time_and_meaning_and_a_missing_one_is_marked() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry signed = plant.record(Plant.reading("W-0126", Seen.NOT_SEEN, Seen.SEEN, 6));
            plant.correctSigned(signed.id(), "Misread.", Plant.reading("W-0126", Seen.FAINT, Seen.SEEN, 6));
            // 21 CFR 11.50(a), (b): printed name, date and time, meaning, in every form that people can read
            assertThat(printed(plant, signed.id().toString(), "signed.pdf").text())
                    .contains("Signed by rivera, 2026-03-31 08:05:00 +02:00, to correct their own reading")
                    .doesNotContain("Not signed");
            Entry unsigned = plant.record(Plant.reading("W-0127", Seen.NOT_SEEN, Seen.SEEN, 6));
            plant.correct(unsigned.id(), "Misread.", Plant.reading("W-0127", Seen.FAINT, Seen.SEEN, 6));
            assertThat(printed(plant, unsigned.id().toString(), "unsigned.pdf").text())
                    .contains("Not signed")
                    .doesNotContain("Signed by");
        }
    }

    @Test
    void a_simulated_home_says_so_on_every_page() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), true)) {
            Entry entry = plant.record(Plant.reading("W-0121", Seen.NOT_SEEN, Seen.SEEN, 9));
            Poppler pdf = printed(plant, entry.id().toString(), "simulated.pdf");
            assertThat(pdf.text().split("SIMULATED CLOCK", -1)).hasSize(pdf.pages() + 1);
            assertThat(pdf.text()).contains("Invalid", "The strip was read too late");
            pdf.page(1);
        }
    }

    @Test
    void the_same_result_at_the_same_time_gives_the_same_bytes() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), true)) {
            Entry entry = plant.record(Plant.reading("W-0122", Seen.NOT_SEEN, Seen.SEEN, 6));
            Poppler one = printed(plant, entry.id().toString(), "one.pdf");
            Poppler other = printed(plant, entry.id().toString(), "other.pdf");
            assertThat(Files.readAllBytes(one.file())).isEqualTo(Files.readAllBytes(other.file()));
        }
    }

    @Test
    void what_is_no_reading_is_refused_in_words() {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry other = plant.append("method.issued", Json.object().with("n", 1));
            for (String id : List.of("nonsense", "bench-1:999", "Bench!:1", new UUID(0, 7).toString())) {
                assertThatThrownBy(() -> printed(plant, id, "none.pdf")).isInstanceOf(BadInput.class);
            }
            assertThatThrownBy(() -> printed(plant, other.id().toString(), "none.pdf"))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("there is no reading");
            assertThat(folder.resolve("none.pdf")).doesNotExist();
        }
    }

    @Test
    void a_folder_that_is_not_there_is_told_and_nothing_is_left_behind() {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry entry = plant.record(Plant.reading("W-0125", Seen.SEEN, Seen.SEEN, 6));
            assertThatThrownBy(() -> printed(plant, entry.id().toString(), "nowhere/result.pdf"))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("there is no such folder");
            assertThat(folder.resolve("nowhere")).doesNotExist();
        }
    }

    @Test
    void a_newer_entry_is_not_guessed() {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry newer = plant.journal
                    .append(List.of(new Draft(
                            new UUID(0, 9),
                            Plant.RIVERA,
                            RecordedReading.KIND,
                            2,
                            RecordedReadingJson.write(Plant.reading("W-0123", Seen.SEEN, Seen.SEEN, 6)))))
                    .get(0);
            assertThatThrownBy(() -> printed(plant, newer.id().toString(), "none.pdf"))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("version 2");
        }
    }

    @Test
    void machines_are_told_what_was_printed() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry entry = plant.record(Plant.reading("W-0124", Seen.NOT_SEEN, Seen.SEEN, 6));
            HeardTerminal heard = HeardTerminal.ofNobody(true);
            call(plant, heard, entry.id().toString(), folder.resolve("told.pdf"));
            assertThat(heard.values()).hasSize(1);
            assertThat(heard.values().get(0).canonical()).contains("\"entry\":\"bench-1:1\"");
        }
    }

    private Poppler printed(Plant plant, String id, String name) throws Exception {
        Path file = folder.resolve(name);
        call(plant, HeardTerminal.ofNobody(false), id, file);
        return new Poppler(file);
    }

    private static void call(Plant plant, HeardTerminal heard, String id, Path file) throws Exception {
        PdfPrinter pdf = new PdfPrinter(plant.home, plant.journal, plant::site);
        Exception[] thrown = new Exception[1];
        CommandLine line = new CommandLine(
                        new ReportCommand(plant.journal, plant::site, List.of(pdf), List.of(), Optional.empty())
                                .commands(heard))
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    thrown[0] = failure;
                    return 2;
                });
        int code = line.execute("result", id, "--out", file.toString());
        if (thrown[0] != null) {
            throw thrown[0];
        }
        assertThat(code).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "day, 2026-03-05, month.pdf, %PDF",
        "month, 2026-03, month.xlsx, PK",
        "line, L1, line.jsonl, '{\"row\"'",
        "batch, B-7, batch.csv, \uFEFFwhat"
    })
    void what_others_make_of_many_results_is_printed_in_the_form_that_the_file_names(
            String of, String name, String file, String begins) throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            Entry entry = plant.record(Plant.reading("W-0117", Seen.NOT_SEEN, Seen.SEEN, 6));
            HeardTerminal heard = HeardTerminal.ofNobody(true);
            ReportSource source = wanted -> new Report(
                    wanted.of() + " " + wanted.name(),
                    List.of(Section.Table.of(List.of("what"), List.of(List.of(wanted.name())))),
                    List.of(entry.ref()));
            assertThat(execute(
                            plant,
                            heard,
                            Optional.of(source),
                            of,
                            name,
                            "--out",
                            folder.resolve(file).toString()))
                    .isZero();
            assertThat(Files.readString(folder.resolve(file), StandardCharsets.ISO_8859_1))
                    .startsWith(new String(begins.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
            assertThat(heard.values()).singleElement().asString().contains(of).contains(name);
        }
    }

    @Test
    void without_the_ledger_it_says_which_feature_makes_them() throws Exception {
        try (Plant plant = new Plant(folder.resolve("home"), false)) {
            HeardTerminal heard = HeardTerminal.ofNobody(false);
            assertThat(execute(
                            plant,
                            heard,
                            Optional.empty(),
                            "month",
                            "2026-03",
                            "--out",
                            folder.resolve("m.pdf").toString()))
                    .isEqualTo(3);
            assertThat(heard.notes())
                    .singleElement()
                    .asString()
                    .contains("Start the program with the feature 'ledger'.");
            assertThat(folder.resolve("m.pdf")).doesNotExist();
        }
    }

    private static int execute(Plant plant, HeardTerminal heard, Optional<ReportSource> source, String... arguments) {
        List<ReportPrinter> printers = List.of(
                new PdfPrinter(plant.home, plant.journal, plant::site),
                new XlsxPrinter(),
                new JsonLinesPrinter(),
                new CsvPrinter());
        return new CommandLine(
                        new ReportCommand(plant.journal, plant::site, printers, List.of(), source).commands(heard))
                .setExecutionExceptionHandler((e, called, result) -> {
                    heard.note(e.getMessage());
                    return e instanceof BadInput ? 2 : 3;
                })
                .execute(arguments);
    }
}
