package wickbench.stock.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.command.Hands;
import wickbench.api.json.Json;
import wickbench.stock.room.StockHome;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;

class StockCommandTest {
    private static final Path KIT = Path.of("src/test/resources/wickbench/stock/kit.json");

    @TempDir
    private Path folder;

    private StockHome home;
    private HeardTerminal heard;

    @BeforeEach
    void open() {
        home = new StockHome(folder.resolve("home"));
        home.methods.issue(StockHome.method(), StockHome.KEEPER.who());
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    @Meets("ISO/IEC 17025 6.4.13")
    void a_box_goes_its_way_from_the_scan_to_its_end() {
        assertThat(stock("define", KIT.toString())).isZero();
        assertThat(fridge("add", "F1", "--name", "Lab fridge", "--low", "2", "--high", "8"))
                .isZero();
        assertThat(stock(
                        "receive",
                        "--scan",
                        "0100614141123452" + "17261231" + "10HZ-1\\x1d21SN0001",
                        "--fridge",
                        "F1",
                        "--boxes",
                        "2",
                        "--insert",
                        "4"))
                .isZero();
        assertThat(heard.notes()).singleElement().asString().contains("revision 4");
        assertThat(heard.lines()).anyMatch(line -> line.contains("HZ-1") && line.contains("awaiting its check"));
        assertThat(stock("check", "HZ-1", "--waive", "--reason", "as before")).isZero();
        assertThat(stock("open", "HZ-1")).isZero();
        assertThat(stock("take", "HZ-1", "--amount", "2", "--reason", "training"))
                .isZero();
        assertThat(stock("count", "HZ-1", "--pouches", "7", "--loose", "3")).isZero();
        assertThat(stock("quarantine", "HZ-1", "--reason", "dropped")).isZero();
        assertThat(stock("release", "HZ-1", "--reason", "whole", "--until", "2026-04-15"))
                .isZero();
        assertThat(stock("list")).isZero();
        assertThat(heard.lines().get(1)).contains("fit").contains("2026-04-15").contains("38");
        assertThat(stock("destroy", "HZ-1", "--reason", "wet")).isZero();
        assertThat(stock("list")).isZero();
        assertThat(heard.lines()).containsExactly("No lot answers this.");
    }

    @Test
    void a_scan_is_shown_and_a_doubtful_one_is_not_taken() {
        assertThat(stock("scan", "(01)00614141123452(17)270200(10)A1")).isZero();
        assertThat(heard.values().get(0).canonical())
                .isEqualTo("{\"answer\":\"read\",\"elements\":{\"expiry\":\"2027-02-28\",\"gtin\":\"00614141123452\","
                        + "\"lot\":\"A1\"},\"identifiers\":[\"01\",\"17\",\"10\"]}");
        assertThat(stock("scan", "10LOT4221SN0001")).isEqualTo(1);
        assertThat(heard.values().get(0).canonical()).contains("\"answer\":\"doubtful\"");
        stock("define", KIT.toString());
        assertThatThrownBy(() -> stock("receive", "--scan", "0100614141123452" + "17261231" + "10LOT4221SN0001"))
                .hasRootCauseInstanceOf(BadInput.class);
        assertThat(stock("receive", "--scan", "0100614141123452" + "17261231", "--lot", "LOT42", "--insert", "3"))
                .isZero();
    }

    @Test
    void what_was_typed_otherwise_than_scanned_is_asked() {
        stock("define", KIT.toString());
        assertThatThrownBy(() -> stock("receive", "--scan", "(01)00614141123452(17)261231(10)A1", "--lot", "A2"))
                .hasRootCauseInstanceOf(BadInput.class);
        assertThatThrownBy(() -> stock("receive", "--kit", "nobody's", "--lot", "A2", "--expiry", "2026-12-31"))
                .hasRootCauseInstanceOf(BadInput.class);
        assertThatThrownBy(() -> stock(
                        "receive", "--kit", StockHome.KIT, "--lot", "A2", "--expiry", "2026-01-31", "--insert", "3"))
                .hasRootCauseInstanceOf(Refusal.class);
        assertThat(home.room.lots(home.clock.instant())).isEmpty();
    }

    @Test
    void a_check_is_read_through_the_door_of_the_bench() {
        home.furnished();
        home.receive(StockHome.LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1)).check(StockHome.LOT, true, true);
        assertThat(stock("check", "HZ-1")).isZero();
        assertThat(heard.lines()).singleElement().asString().contains("passed its check");
        assertThatThrownBy(() -> stock("check", "HZ-1", "--sheet", "run.csv")).hasMessageContaining("bench");
    }

    @Test
    void what_is_due_and_how_far_it_goes_are_told() {
        home.furnished();
        home.fit(StockHome.LOT, "2026-03-09", 1);
        assertThat(stock("due", "--within", "10")).isZero();
        assertThat(heard.lines()).anyMatch(line -> line.contains("2026-03-09") && line.contains("out of date"));
        assertThat(stockJson("outlook")).isZero();
        Json.Obj outlook = (Json.Obj) ((Json.Arr) heard.values().get(0)).items().get(0);
        assertThat(outlook.get("strips")).contains(new Json.Num(new java.math.BigDecimal("16")));
        assertThat(stock(
                        "device",
                        "T1",
                        "--type",
                        "timer",
                        "--name",
                        "x",
                        "--calibrated",
                        "2025-01-01",
                        "--due",
                        "2026-01-01"))
                .isZero();
        assertThat(heard.lines()).anyMatch(line -> line.contains("overdue"));
    }

    @Test
    void a_fridge_is_read_and_reported() throws Exception {
        home.furnished();
        Path log = Files.writeString(
                folder.resolve("log.csv"),
                "time;°C\n2026-03-02T09:00:00Z;5\n2026-03-02T09:10:00Z;9\n2026-03-02T09:20:00Z;6\n");
        home.after(Duration.ofDays(1));
        assertThat(fridge("import", log.toString(), "--fridge", "F1")).isZero();
        assertThat(heard.lines()).anyMatch(line -> line.startsWith("too warm"));
        assertThat(fridge("import", log.toString(), "--fridge", "F1")).isZero();
        assertThat(heard.lines().get(0)).contains("before");
        heard = HeardTerminal.of(StockHome.KEEPER.who(), true);
        run(new FridgeCommand(home.fridges, home.room, home.clock, hands(), List.of(), heard), "report");
        assertThat(heard.values().get(0).canonical())
                .contains("\"mean_kinetic\":")
                .contains("\"cause\":\"warm\"");
    }

    @Test
    void a_file_with_many_excursions_is_summed_up_and_its_report_tells_all() throws Exception {
        home.furnished();
        StringBuilder text = new StringBuilder("time;°C\n");
        for (int i = 0; i < 48; i++) {
            text.append(StockHome.START.plus(Duration.ofMinutes(10L * i))).append(i % 4 == 1 ? ";9\n" : ";5\n");
        }
        Path log = Files.writeString(folder.resolve("log.csv"), text);
        home.after(Duration.ofDays(1));
        assertThat(fridge("import", log.toString(), "--fridge", "F1")).isZero();
        assertThat(heard.lines())
                .contains("Times outside the range or without a reading: 12. The last 5; all with: fridge report");
        assertThat(heard.lines().stream().filter(line -> line.startsWith("too warm")))
                .hasSize(5);
        fridge("report");
        assertThat(heard.lines().stream().filter(line -> line.startsWith("too warm")))
                .hasSize(12);
    }

    @Test
    void a_calm_file_says_so() throws Exception {
        home.furnished();
        Path log = Files.writeString(
                folder.resolve("log.csv"), "time;°C\n2026-03-02T09:00:00Z;5\n2026-03-02T09:10:00Z;5.5\n");
        home.after(Duration.ofDays(1));
        assertThat(fridge("import", log.toString(), "--fridge", "F1")).isZero();
        assertThat(heard.lines()).contains("All within the range of the fridge, and without a gap.");
    }

    @Test
    void what_is_no_id_of_a_result_is_named() {
        assertThatThrownBy(() -> stock("trace", "--result", "notanid"))
                .hasRootCauseMessage("--result: expected the id of a result, found 'notanid'");
    }

    @Test
    void an_unknown_lot_is_named() {
        assertThatThrownBy(() -> stock("open", "NOPE")).hasRootCauseMessage("LOT: no lot NOPE was received here");
    }

    private int stock(String... arguments) {
        return stock(false, arguments);
    }

    private int stockJson(String... arguments) {
        return stock(true, arguments);
    }

    private int stock(boolean json, String... arguments) {
        heard = HeardTerminal.of(StockHome.KEEPER.who(), json);
        return run(
                new StockCommand(
                        new Doors(home.room, home.keeping, new HousePapers(home.room, home.fridges, List.of())),
                        home.clock,
                        hands(),
                        Optional.empty(),
                        List.of(),
                        heard),
                arguments);
    }

    private int fridge(String... arguments) {
        heard = HeardTerminal.of(StockHome.KEEPER.who(), false);
        return run(new FridgeCommand(home.fridges, home.room, home.clock, hands(), List.of(), heard), arguments);
    }

    /** As in a house where nobody has a passphrase yet. */
    private Hands hands() {
        return new Hands(heard, new OpenHouse());
    }

    private static int run(Object command, String... arguments) {
        List<Exception> failures = new ArrayList<>();
        int code = new CommandLine(command)
                .setExecutionExceptionHandler((failure, line, parsed) -> {
                    failures.add(failure);
                    return 70;
                })
                .execute(arguments);
        if (!failures.isEmpty()) {
            throw new IllegalStateException(failures.get(0));
        }
        return code;
    }
}
