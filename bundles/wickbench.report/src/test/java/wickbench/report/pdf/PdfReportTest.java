package wickbench.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.method.Seen;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Column;
import wickbench.api.report.Section.Table;
import wickbench.api.report.Section.Tone;
import wickbench.report.Plant;
import wickbench.report.Poppler;
import wickbench.report.chart.Charts;
import wickbench.testing.Meets;

/** What stands on paper, read back by poppler. */
class PdfReportTest {
    private static final Hash KEY = Hash.ofContent("key");
    private static final String LONG_NAME = "Ab".repeat(5_000);

    @TempDir
    Path folder;

    @Test
    void every_kind_of_section_is_printed() throws Exception {
        Poppler pdf = printed("everything", everything(), seals(1));
        String text = pdf.text();
        assertThat(text)
                .contains("Monthly review", "Positives by place", "Kit fridge K2, stockroom", "highest allowed 8 °C")
                .contains("µg/100 cm² × 2 ≥ 5 — done", "hook line: not seen", "test line: damaged", "no rows");
        assertThat(pdf.images().lines().skip(2))
                .as("charts and strips are vectors")
                .isEmpty();
        assertThat(pdf.fonts().lines().skip(2)).isNotEmpty().allMatch(line -> line.contains("DejaVu"));
        for (int page = 1; page <= pdf.pages(); page++) {
            pdf.page(page);
        }
    }

    /** Every word of a report in its order. */
    @Test
    void the_words_are_the_agreed_ones() throws Exception {
        Poppler pdf = printed("golden", everything(), seals(1));
        assertThat(words(pdf.raw())).isEqualTo(words(golden()));
    }

    private static List<String> words(String text) {
        return Stream.of(text.split("\\s+")).filter(word -> !word.isEmpty()).toList();
    }

    private static String golden() throws IOException {
        try (InputStream in = PdfReportTest.class.getResourceAsStream("everything.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    @Meets("21 CFR 11.10(b)")
    void a_table_repeats_its_header_on_each_page_and_loses_no_row() throws Exception {
        List<List<String>> rows = IntStream.range(0, 200)
                .mapToObj(i -> List.of("Row-" + i + ".", "Place with a name of some length " + i, "" + i * 7))
                .toList();
        Table table = new Table(List.of(Column.text("Sample"), Column.text("Place"), Column.number("Strips")), rows);
        Poppler pdf = printed("table", new Report("Table", List.of(table), List.of()), seals(1));
        String text = pdf.text();
        for (int i = 0; i < rows.size(); i++) {
            assertThat(text).contains("Row-" + i + ".");
        }
        assertThat(pdf.pages()).isGreaterThan(2);
        assertThat(text.split("Sample\\s+Place\\s+Strips", -1)).hasSize(pdf.pages() + 1);
        pdf.page(2);
    }

    @Test
    void hostile_text_is_printed_whole_and_nothing_vanishes_unmarked() throws Exception {
        String hostile = "bell\u0007 nul\u0000 override\u202E joiner\u200D cheese\uD83E\uDDC0 half\uD800 漢";
        Report report = new Report(
                "Hostile\nnames\u0007",
                List.of(
                        new Section.Paragraph(hostile),
                        new Section.Paragraph("first\r\nsecond\u2028third"),
                        Table.of(List.of("Name", LONG_NAME), List.of(List.of(LONG_NAME, hostile)))),
                List.of());
        Poppler pdf = printed("hostile", report, seals(1));
        String text = pdf.raw();
        assertThat(text)
                .contains("bell[U+0007]", "nul[U+0000]", "override[U+202E]", "joiner[U+200D]", "cheese[U+1F9C0]")
                .contains("half[U+D800]", "[U+6F22]", "first\nsecond\nthird");
        assertThat(pdf.text()).contains("Hostile↵names[U+0007]");
        assertThat(count(text, 'A')).as("each A of the long name in the cell").isGreaterThanOrEqualTo(5_000);
        for (int page = 1; page <= pdf.pages(); page++) {
            assertThat(marginsAreClear(pdf.page(page)))
                    .as("margins of page %d", page)
                    .isTrue();
        }
    }

    @Test
    void a_title_of_ten_thousand_characters_is_printed_whole_and_cut_with_a_mark_above() throws Exception {
        Poppler pdf = printed("title", new Report(LONG_NAME, List.of(), List.of()), seals(1));
        assertThat(count(pdf.raw(), 'A')).isGreaterThanOrEqualTo(5_000);
        assertThat(pdf.text()).contains("…");
        assertThat(marginsAreClear(pdf.page(1))).isTrue();
    }

    @Test
    void hebrew_is_set_from_right_to_left_and_read_back_in_its_order() throws Exception {
        Report report = new Report("RTL", List.of(new Section.Paragraph("Label: שלום (עולם) 12 end")), List.of());
        Poppler pdf = printed("rtl", report, seals(1));
        assertThat(pdf.raw())
                .contains("שלום")
                .contains("עולם")
                .contains("Label:")
                .contains("end");
        assertThat(VisualOrder.of("Label: שלום (עולם) 12 end")).isEqualTo("Label: 12 (םלוע) םולש end");
        pdf.page(1);
    }

    @Test
    void each_station_drawn_from_is_sealed() throws Exception {
        for (int stations : List.of(0, 1, 2, 3, 9)) {
            Poppler pdf = printed(
                    "stations-" + stations,
                    new Report("Stations", List.of(new Section.Paragraph("x")), List.of()),
                    seals(stations));
            pdf.page(1);
            for (StationSeal seal : seals(stations)) {
                assertThat(pdf.text())
                        .contains(
                                seal.station().value(),
                                seal.checkpoint().orElseThrow().root().hex());
                if (stations == 1) {
                    assertThat(pdf.text()).contains("the fingerprint of the key that signed it is", KEY.hex());
                }
            }
        }
    }

    @Test
    void a_station_without_checkpoint_says_so() throws Exception {
        List<StationSeal> seals =
                List.of(new StationSeal(new StationId("dock-2"), 4, 4, Optional.empty(), Optional.empty()));
        Poppler pdf = printed("absent", new Report("Absent", List.of(), List.of()), seals);
        assertThat(pdf.text()).contains("station dock-2, entry 4", "No checkpoint of that station is at hand");
    }

    @Test
    void many_narrow_columns_stay_on_the_page() throws Exception {
        List<String> header =
                IntStream.range(0, 30).mapToObj(i -> "Column " + i).toList();
        List<List<String>> rows = new ArrayList<>();
        rows.add(header.stream().map(String::toUpperCase).toList());
        Poppler pdf = printed("narrow", new Report("Narrow", List.of(Table.of(header, rows)), List.of()), seals(1));
        assertThat(marginsAreClear(pdf.page(1))).isTrue();
    }

    @Test
    void a_card_is_made_smaller_until_it_goes_on_one_page_and_what_could_not_be_read_then_takes_more()
            throws Exception {
        Poppler card = printed("card", card(45), seals(1));
        assertThat(card.pages()).isOne();
        assertThat(card.text()).contains("Step 0.", "Step 44.", "The insert governs.", "Page 1 of 1");
        assertThat(card.code(1)).contains("station-1");
        assertThat(marginsAreClear(card.page(1))).isTrue();
        assertThat(printed("book", card(200), seals(1)).pages()).isGreaterThan(2);
    }

    private static Report card(int steps) {
        List<Section> sections = new ArrayList<>();
        IntStream.range(0, 8)
                .forEach(i -> sections.add(new Section.StripFigure(
                        "Invalid, a sign: hold", Plant.strip(Seen.SEEN, Seen.NOT_SEEN), Map.of())));
        sections.add(Table.of(
                List.of("No.", "What is done"),
                IntStream.range(0, steps)
                        .mapToObj(i -> List.of("" + i, "Step " + i + "."))
                        .toList()));
        sections.add(new Section.Paragraph("The insert governs."));
        return new Report("Card", sections, Report.Paper.ONE_PAGE, List.of());
    }

    static Report everything() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section.Paragraph(
                "An invented plant in an invented month. Rinse water, wet swabs and food: µg/100 cm² × 2 ≥ 5 — done."));
        for (Tone tone : Tone.values()) {
            sections.add(
                    new Section.Notice(tone, "Notice " + tone, "What it means, in a sentence that explains itself."));
        }
        sections.add(new Section.Heading("Facts"));
        sections.add(new Section.Facts(
                List.of(new Section.Fact("Period", "2026-03-01 to 2026-03-31"), new Section.Fact("Strips", "214"))));
        sections.add(new Section.Heading("Charts"));
        sections.add(new Section.Figure(Charts.fridge()));
        sections.add(new Section.Figure(Charts.detection()));
        sections.add(new Section.Figure(Charts.bars()));
        sections.add(new Section.Figure(Charts.stock()));
        sections.add(new Section.Heading("Strips"));
        sections.add(new Section.StripFigure("Rivera", Plant.strip(Seen.DAMAGED, Seen.NOT_SEEN), Map.of()));
        sections.add(new Section.Heading("No table rows"));
        sections.add(Table.of(List.of("Sample", "Place"), List.of()));
        return new Report("Monthly review of the hazelnut line", sections, List.of());
    }

    static List<StationSeal> seals(int stations) {
        return IntStream.range(0, stations).mapToObj(PdfReportTest::seal).toList();
    }

    private static StationSeal seal(int number) {
        StationId station = new StationId("station-" + (number + 1));
        Hash root = Hash.ofContent("root " + number);
        String note = "wickbench.invalid/" + station + "\n" + 120 + number + "\n" + "A".repeat(43) + "=\n\n— "
                + "wickbench.invalid/" + station + " " + "B".repeat(91) + "=\n";
        return new StationSeal(
                station, 3, 117, Optional.of(new Checkpoint(station, 120 + number, root, note)), Optional.of(KEY));
    }

    private Poppler printed(String name, Report report, List<StationSeal> seals) throws Exception {
        Path file = folder.resolve(name + ".pdf");
        Chrome chrome = new Chrome(
                "Marlow Oats, an invented plant", "printed 2026-04-01 09:00 +02:00", Optional.empty(), seals);
        try (OutputStream out = Files.newOutputStream(file)) {
            new PdfReport().print(report, chrome, 1_775_026_800_000L, out);
        }
        return new Poppler(file);
    }

    private static long count(String text, char c) {
        return text.chars().filter(other -> other == c).count();
    }

    /** Nothing runs out of the page's sides: 12 mm of each are white. */
    private static boolean marginsAreClear(BufferedImage page) {
        int margin = page.getWidth() * 12 / 210;
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < margin; x++) {
                if (page.getRGB(x, y) != Color.WHITE.getRGB()
                        || page.getRGB(page.getWidth() - 1 - x, y) != Color.WHITE.getRGB()) {
                    return false;
                }
            }
        }
        return true;
    }
}
