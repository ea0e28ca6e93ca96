package wickbench.stock.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.command.Hands;
import wickbench.api.lot.LotId;
import wickbench.api.profile.Site;
import wickbench.report.pdf.PdfPrinter;
import wickbench.stock.Device;
import wickbench.stock.room.StockHome;
import wickbench.testing.HeardTerminal;

/** How the stock room stands, on paper, read back by others than print it. */
class StockReportTest {
    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void paper_tells_what_is_due_the_lots_the_outlook_the_fridges_and_the_equipment() throws IOException {
        home.fit(LOT, "2026-12-31", 2);
        home.receive(new LotId("HZ-OTHER"), "2026-03-20", 1);
        home.after(Duration.ofDays(2));
        home.fridges.measured(
                "F1",
                home.clock.instant().minus(Duration.ofHours(20)),
                home.clock.instant(),
                new BigDecimal("-1"),
                new BigDecimal("5"),
                KEEPER);
        home.keeping.calibrated(
                new Device(
                        "PT-1",
                        Device.Type.PIPETTE,
                        "pipette at the bench",
                        LocalDate.parse("2025-01-01"),
                        LocalDate.parse("2026-01-01"),
                        Optional.empty(),
                        Optional.empty()),
                KEEPER);
        Path file = folder.resolve("stock.pdf");

        assertThat(report(file)).isZero();

        assertThat(words(file))
                .contains("Stock room on 2026-03-04")
                .contains("To be seen to", "in quarantine: decide on it", "calibration due (pipette at the bench)")
                .contains("Lots, first expired first", "HZ-1", "HZ-OTHER", "in quarantine, not checked")
                .contains("Outlook", "Fridges, the last 30 days", "Lab fridge", "Equipment", "PT-1", "overdue")
                .contains("The mean kinetic temperature is a screening figure")
                .contains("The kit's insert, the site's food-safety plan, local law and licensed practice govern.");
    }

    @Test
    void an_empty_stock_room_is_printed_too_and_says_so() throws IOException {
        Path file = folder.resolve("stock.pdf");
        assertThat(report(file)).isZero();
        assertThat(words(file)).contains("Stock room on 2026-03-02", "None.");
    }

    @Test
    void a_name_of_no_form_that_is_printed_is_refused_and_writes_nothing() {
        Path file = folder.resolve("stock.doc");
        assertThatThrownBy(() -> report(file))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("ends in .pdf, .csv, .xlsx or .jsonl");
        assertThat(Files.exists(file)).isFalse();
    }

    private int report(Path file) {
        HeardTerminal heard = HeardTerminal.of(KEEPER.who(), false);
        PdfPrinter printer =
                new PdfPrinter(home.home, home.journal, () -> Site.of(Optional.empty(), home.journal.founding()));
        Object command = new StockCommand(
                new Doors(home.room, home.keeping, new HousePapers(home.room, home.fridges, List.of(printer))),
                home.clock,
                new Hands(heard, new OpenHouse()),
                Optional.empty(),
                List.of(printer),
                heard);
        BadInput[] wrong = new BadInput[1];
        int code = new CommandLine(command)
                .setExecutionExceptionHandler((failure, line, parsed) -> {
                    wrong[0] = (BadInput) failure;
                    return 2;
                })
                .execute("report", "--out", file.toString());
        if (wrong[0] != null) {
            throw wrong[0];
        }
        return code;
    }

    /** Returns the words of a PDF, each run of blanks as one. */
    private static String words(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
