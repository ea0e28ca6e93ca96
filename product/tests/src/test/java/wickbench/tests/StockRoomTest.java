package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The stock room by its commands: alone, and beside bench and ledger. */
class StockRoomTest {
    private static final Path DEMO = BuiltProduct.folder().resolve("demo");
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final String STOCK_ONLY = "base,stock";
    private static final String COMPLETE = "complete";
    private static final String GTIN = "09520123451011";
    private static final String METHOD = "hazelnut-swab-dry";
    private static final int REFUSED = 3;
    private static final int BAD_INPUT = 2;

    @TempDir
    static Path caches;

    private static StartedPrograms programs;

    @TempDir
    Path temporary;

    private String features = STOCK_ONLY;
    private Path home;

    @BeforeAll
    static void start() {
        programs = new StartedPrograms(caches);
    }

    @AfterAll
    static void stop() throws IOException {
        programs.close();
    }

    @BeforeEach
    void found() throws Exception {
        at("home");
        done("station", "found", "store-1", "--zone", ZONE.getId());
        done("stock", "define", DEMO.resolve("kits/hazelnut.json").toString());
        done("fridge", "add", "F1", "--name", "Laboratory fridge", "--low", "3", "--high", "9");
    }

    @Test
    void alone_it_receives_by_scan_reads_the_logger_and_holds_the_lots_of_a_warm_night() throws Exception {
        // as a scanner sends it: symbology identifier, then the identifiers without brackets
        done(
                "stock",
                "receive",
                "--scan",
                "]d201" + GTIN + "1727033110HZ-7",
                "--insert",
                "3",
                "--fridge",
                "F1",
                "--at",
                "2026-07-01");
        Answer imported = done("fridge", "import", DEMO.resolve("logger-f1.csv").toString(), "--fridge", "F1");
        assertThat(imported.out()).contains("1008 readings", "too warm", "15.5 °C", "lot HZ-7");

        assertThat(done("stock", "list").out()).contains("HZ-7", "in quarantine", "2027-03-31");
        assertThat(done("--json", "fridge", "report", "--from", "2026-07-09", "--to", "2026-07-17")
                        .out())
                .contains("\"cause\":\"warm\"", "\"from\":\"2026-07-11T21:10:00Z\"", "\"lots\":[\"HZ-7\"]");
        // the report names the entry, and the logger's file lies beside it
        assertThat(done("fridge", "report", "--from", "2026-07-09", "--to", "2026-07-17")
                        .out())
                .contains("drawn from store-1:4");
        assertThat(done("attach", "list", "store-1:4").out()).contains("logger-f1.csv");
        assertThat(done("journal", "verify").code()).isZero();
    }

    @Test
    void a_scan_that_could_mean_two_things_is_asked_for_and_nothing_is_recorded() throws Exception {
        Answer asked = call("stock", "receive", "--scan", "01" + GTIN + "10HZ17270331");
        assertThat(asked.code()).isEqualTo(BAD_INPUT);
        assertThat(asked.err()).contains("--scan");
        assertThat(done("stock", "list").out()).doesNotContain("HZ");
    }

    @Test
    void an_expired_lot_starts_no_strip_while_a_sheet_of_yesterday_is_recorded_as_of_then() throws Exception {
        LocalDate yesterday = LocalDate.now(ZONE).minusDays(1);
        received("HZ-8", yesterday);
        features = COMPLETE;
        done("method", "issue", DEMO.resolve("methods/" + METHOD + ".json").toString());

        Answer refused = call("bench", "may", METHOD, "--lot", "HZ-8", "--lot-check");
        assertThat(refused.code()).isEqualTo(REFUSED);
        assertThat(refused.err()).contains("The kit lot was out of date: " + yesterday);

        done("record", "--sheet", sheet("HZ-8", yesterday.atTime(12, 0).atZone(ZONE)));
        assertThat(done("--json", "ledger", "list").out())
                .contains("\"outcome\":\"negative\"", "\"lot\":\"HZ-8\"")
                .doesNotContain("\"outcome\":\"invalid\"");
        assertThat(done("ledger", "show", lastEntry()).out())
                .contains("stock: cleared")
                .doesNotContain("lot.expired");

        done("record", "--sheet", sheet("HZ-8", ZonedDateTime.now(ZONE).minusMinutes(6)));
        assertThat(done("ledger", "show", lastEntry()).out()).contains("Invalid", "[lot.expired]");
    }

    @Test
    void a_lot_rejected_later_opens_a_decision_also_where_the_stock_room_came_last() throws Exception {
        features = "base,bench,ledger";
        done("method", "issue", DEMO.resolve("methods/" + METHOD + ".json").toString());
        done("record", "--sheet", sheet("HZ-9", ZonedDateTime.now(ZONE).minusHours(2)), "--as", "op-05");
        String negative = lastEntry();

        features = STOCK_ONLY;
        received("HZ-9", LocalDate.now(ZONE).plusYears(1));
        done("stock", "reject", "HZ-9", "--reason", "the maker recalls it");
        String rejected = lastEntry();

        features = COMPLETE;
        assertThat(done("ledger", "list", "--in-doubt").out()).contains("Negative, in doubt", negative);
        assertThat(done("bench", "owed").out()).contains("its lot was rejected");
        Answer own = call("ledger", "decide", rejected, "--reason", "it is fine", "--as", "op-03");
        assertThat(own.code()).as(own.err()).isEqualTo(REFUSED);
        done("ledger", "decide", rejected, "--reason", "sampled again, held meanwhile", "--as", "quality");
        assertThat(done("ledger", "list", "--in-doubt").out()).contains("No result answers this.");
        assertThat(done("index", "verify").code()).isZero();
    }

    @Test
    void the_last_strip_taken_at_two_stations_is_a_clash_at_both_until_it_is_counted() throws Exception {
        Path share = Files.createDirectory(temporary.resolve("share"));
        received("HZ-5", LocalDate.now(ZONE).plusYears(1));
        done("stock", "count", "HZ-5", "--pouches", "0", "--loose", "1", "--reason", "the rest was lent");
        done("station", "share", share.toString());
        done("station", "list");
        at("other");
        done("station", "found", "bench-1", "--zone", ZONE.getId(), "--share", share.toString());
        done("station", "list");
        assertThat(done("stock", "show", "HZ-5").out()).contains("strip: 1 piece left");

        // neither sees the other while the folder is away
        Path away = Files.move(share, temporary.resolve("away"));
        done("stock", "take", "HZ-5", "--amount", "1", "--reason", "training");
        at("home");
        done("stock", "take", "HZ-5", "--amount", "1", "--reason", "torn");
        assertThat(call("stock", "take", "HZ-5", "--amount", "1", "--reason", "once more")
                        .code())
                .isEqualTo(REFUSED);
        Files.move(away, share);

        for (String station : List.of("home", "other", "home")) {
            at(station);
            done("station", "list");
        }
        for (String station : List.of("home", "other")) {
            at(station);
            assertThat(done("stock", "show", "HZ-5").out()).contains("used beyond the count: 1", "To be settled");
        }
        done("stock", "count", "HZ-5", "--pouches", "0", "--loose", "0", "--reason", "both were taken");
        assertThat(done("stock", "show", "HZ-5").out()).doesNotContain("To be settled");
    }

    private void at(String station) {
        home = temporary.resolve(station);
    }

    private void received(String lot, LocalDate expiry) throws Exception {
        String day = DateTimeFormatter.ofPattern("yyMMdd").format(expiry);
        String at = LocalDate.now(ZONE).minusDays(20).toString();
        done(
                "stock",
                "receive",
                "--scan",
                "(01)" + GTIN + "(17)" + day + "(10)" + lot,
                "--insert",
                "3",
                "--fridge",
                "F1",
                "--at",
                at);
    }

    /** One strip without a test line, read to check the lot, so that it may come before the check. */
    private String sheet(String lot, ZonedDateTime started) throws IOException {
        String row = String.join(
                ",",
                "S-1",
                "L2 kettle rim",
                METHOD,
                "swab-dry",
                lot,
                "op-03",
                at(started.minusHours(1)),
                at(started.minusMinutes(2)),
                "62",
                at(started),
                at(started.plusSeconds(312)),
                "control hook",
                "lot-check");
        Path file = Files.createTempFile(temporary, "sheet", ".csv");
        Files.writeString(
                file,
                "sample,place,method,route,lot,operator,out_of_fridge,extracted,shaken_s,started,read,seen,reason\n"
                        + row + "\n");
        return file.toString();
    }

    private static String at(ZonedDateTime time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time.withNano(0));
    }

    /** The place of the newest entry. */
    private String lastEntry() throws IOException {
        Path journal = home.resolve("journal/store-1/entries-000000.jsonl");
        return "store-1:" + (Files.readAllLines(journal).size() - 1);
    }

    private Answer done(String... arguments) throws Exception {
        Answer answer = call(arguments);
        assertThat(answer.code())
                .as(String.join(" ", arguments) + "\n" + answer)
                .isZero();
        return answer;
    }

    private Answer call(String... arguments) throws Exception {
        List<String> line = new ArrayList<>(List.of("--home", home.toString(), "--as", "keeper"));
        List<String> own = List.of(arguments);
        if (own.contains("--as")) {
            line.subList(line.size() - 2, line.size()).clear();
        }
        line.addAll(own);
        return programs.with(features).call(line.toArray(String[]::new));
    }
}
