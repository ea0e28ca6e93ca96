package wickbench.stock.face;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.command.Hands;
import wickbench.api.lot.LotId;
import wickbench.api.profile.Site;
import wickbench.report.pdf.PdfPrinter;
import wickbench.stock.Kit;
import wickbench.stock.gs1.ElementStrings;
import wickbench.stock.gs1.Identifier;
import wickbench.stock.gs1.Scan;
import wickbench.stock.room.StockHome;
import wickbench.testing.HeardTerminal;

/** Labels are printed, drawn, and read back as a scanner would. */
class LotLabelsTest {
    private static final int DPI = 200;
    private static final int REFUSED = 3;
    private static final int BAD_INPUT = 2;

    @TempDir
    private Path folder;

    private StockHome home;
    private HeardTerminal heard;

    @BeforeEach
    void open() {
        home = new StockHome(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void each_pouch_gets_a_gs1_code_that_our_own_scan_reads_without_a_doubt() throws Exception {
        home.receive(LOT, "2026-12-31", 1);
        Path file = folder.resolve("labels.pdf");

        assertThat(label(LOT.value(), "--pdf", file.toString())).isZero();

        // four sealed pouches of one box
        List<Result> codes = codes(file);
        assertThat(codes).hasSize(4).allSatisfy(code -> {
            assertThat(code.getBarcodeFormat()).isEqualTo(BarcodeFormat.DATA_MATRIX);
            // FNC1 in the first place: a GS1 symbol, General Specifications table 5.1.2-1
            assertThat(code.getResultMetadata()).containsEntry(ResultMetadataType.SYMBOLOGY_IDENTIFIER, "]d2");
            Scan.Read read = (Scan.Read) ElementStrings.parse(code.getText(), 2026);
            assertThat(read.value(Identifier.GTIN)).contains("00614141123452");
            assertThat(read.value(Identifier.LOT)).contains("HZ-1");
            assertThat(read.date(Identifier.EXPIRY)).contains(LocalDate.parse("2026-12-31"));
        });
        assertThat(words(file)).contains("HZ-1", "use by 2026-12-31", "pouch 4 of 4", "use within 72 h of opening");
    }

    @Test
    void a_lot_number_in_which_other_elements_could_begin_is_read_back_whole() throws Exception {
        // without the separator behind it, the tail could be a serial number and an expiry
        LotId treacherous = new LotId("A2101-17270331");
        home.receive(treacherous, "2027-03-31", 1);
        Path file = folder.resolve("labels.pdf");

        label(treacherous.value(), "--count", "1", "--pdf", file.toString());

        Scan scan = ElementStrings.parse(codes(file).get(0).getText(), 2026);
        assertThat(((Scan.Read) scan).value(Identifier.LOT)).contains(treacherous.value());
    }

    @Test
    void tubes_get_small_ones() throws Exception {
        home.receive(LOT, "2026-12-31", 1);
        Path file = folder.resolve("tubes.pdf");

        assertThat(label(LOT.value(), "--on", "tube", "--pdf", file.toString())).isZero();

        assertThat(codes(file)).hasSize(5);
        assertThat(words(file)).contains("sample");
    }

    @Test
    void a_decision_that_shortened_the_lot_stands_in_words_and_the_label_of_the_maker_in_the_code() throws Exception {
        home.fit(LOT, "2026-12-31", 1);
        home.keeping.quarantine(LOT, "stood in the sun", KEEPER);
        home.keeping.release(LOT, Optional.of(LocalDate.parse("2026-04-10")), "shortened", KEEPER);
        Path file = folder.resolve("labels.pdf");

        label(LOT.value(), "--count", "1", "--pdf", file.toString());

        assertThat(words(file)).contains("use by 2026-04-10");
        Scan.Read read = (Scan.Read) ElementStrings.parse(codes(file).get(0).getText(), 2026);
        assertThat(read.date(Identifier.EXPIRY)).contains(LocalDate.parse("2026-12-31"));
    }

    @Test
    void a_kit_without_a_number_and_a_lot_number_beyond_the_standard_get_the_lot_as_it_stands() throws Exception {
        Kit kit = StockHome.kit();
        home.keeping.define(
                new Kit(
                        kit.name(),
                        List.of(),
                        kit.pouches(),
                        kit.parts(),
                        kit.boxDays(),
                        kit.pouchHours(),
                        kit.mayMix(),
                        kit.storage(),
                        kit.check(),
                        kit.supply(),
                        kit.insertRevision()),
                KEEPER);
        home.receive(LOT, "2026-12-31", 1);
        Path file = folder.resolve("labels.pdf");

        label(LOT.value(), "--count", "1", "--pdf", file.toString());

        assertThat(codes(file)).singleElement().satisfies(code -> {
            assertThat(code.getBarcodeFormat()).isEqualTo(BarcodeFormat.QR_CODE);
            assertThat(code.getText()).isEqualTo("HZ-1");
        });
    }

    @Test
    void many_go_over_several_pages_and_none_is_lost() throws Exception {
        home.receive(LOT, "2026-12-31", 1);
        Path file = folder.resolve("labels.pdf");

        label(LOT.value(), "--count", "40", "--pdf", file.toString());

        assertThat(words(file)).contains("pouch 1 of 40", "pouch 40 of 40");
        assertThat(codes(file)).hasSize(40);
    }

    @Test
    void nothing_is_printed_of_a_lot_that_may_not_be_used() {
        home.fit(LOT, "2026-03-10", 1);
        home.clock.moveTo(java.time.Instant.parse("2026-03-10T23:00:00Z"));
        Path file = folder.resolve("labels.pdf");

        assertThat(label(LOT.value(), "--pdf", file.toString())).isEqualTo(REFUSED);
        assertThat(heard.notes()).singleElement().asString().contains("HZ-1", "2026-03-10");
        assertThat(file).doesNotExist();
    }

    @Test
    void what_cannot_be_is_one_line() {
        home.receive(LOT, "2026-12-31", 1);
        assertThat(label(LOT.value(), "--count", "0", "--pdf", "x.pdf")).isEqualTo(BAD_INPUT);
        assertThat(heard.notes()).containsExactly("--count: expected 1 to 1000 labels, found 0");
        assertThat(label(LOT.value(), "--pdf", "x.png")).isEqualTo(BAD_INPUT);
        assertThat(label(LOT.value(), "--on", "hat", "--pdf", "x.pdf")).isEqualTo(BAD_INPUT);
        assertThat(label("HZ-404", "--pdf", "x.pdf")).isEqualTo(BAD_INPUT);
        assertThat(label(LOT.value(), "--pdf", folder.resolve("none/x.pdf").toString()))
                .isEqualTo(BAD_INPUT);
    }

    private int label(String... arguments) {
        heard = HeardTerminal.of(KEEPER.who(), false);
        PdfPrinter printer =
                new PdfPrinter(home.home, home.journal, () -> Site.of(Optional.empty(), home.journal.founding()));
        Object command = new StockCommand(
                new Doors(home.room, home.keeping, new HousePapers(home.room, home.fridges, List.of())),
                home.clock,
                new Hands(heard, new OpenHouse()),
                Optional.empty(),
                List.of(printer),
                heard);
        CommandLine line = new CommandLine(command).setExecutionExceptionHandler((e, called, result) -> {
            heard.note(e.getMessage());
            assertThat(e).isInstanceOfAny(BadInput.class, Refusal.class);
            return e instanceof BadInput ? BAD_INPUT : REFUSED;
        });
        List<String> all = new java.util.ArrayList<>(List.of("label"));
        all.addAll(List.of(arguments));
        return line.execute(all.toArray(String[]::new));
    }

    private static List<Result> codes(Path file) throws IOException {
        List<Result> codes = new java.util.ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage drawn = renderer.renderImageWithDPI(page, DPI);
                Cells.of(drawn).forEach(cell -> read(cell).ifPresent(codes::add));
            }
        }
        return codes;
    }

    private static Optional<Result> read(BufferedImage cell) {
        int[] pixels = cell.getRGB(0, 0, cell.getWidth(), cell.getHeight(), null, 0, cell.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(cell.getWidth(), cell.getHeight(), pixels)));
        try {
            return Optional.of(new MultiFormatReader()
                    .decode(
                            bitmap,
                            Map.of(
                                    DecodeHintType.POSSIBLE_FORMATS,
                                    List.of(BarcodeFormat.DATA_MATRIX, BarcodeFormat.QR_CODE))));
        } catch (NotFoundException e) {
            return Optional.empty();
        }
    }

    private static String words(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
