package wickbench.plant.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.json.Json;
import wickbench.plant.book.PlantHome;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

class PlantCommandTest {
    /** TSPLIB br17 (Repetto); Reinelt, ORSA J. Comput. 3 (1991) 376. */
    private static final Path BR17 = Path.of("src/test/resources/wickbench/plant/br17.csv");

    private static final String DAY = """
            ,oat bar,nut bar,plain bar
            oat bar,,10,45
            nut bar,60,0,90
            plain bar,5,12.5,
            """;

    @TempDir
    private static Path houses;

    private static PlantHome home;

    @TempDir
    Path folder;

    @BeforeAll
    static void open() {
        home = new PlantHome(houses.resolve("home"));
    }

    @AfterAll
    static void close() {
        home.close();
    }

    @Test
    void the_published_optimum_of_br17_is_found_and_proven() throws IOException {
        Json.Obj closed = json("--matrix", BR17.toString(), "--closed");
        // published: optimum 39 of the closed tour
        assertThat(closed.get("total_min")).contains(new Json.Num(new BigDecimal(39)));
        assertThat(closed.get("optimal")).contains(new Json.Bool(true));
        assertThat(Schemas.published().errors("plant-order.schema.json", closed.canonical()))
                .isEmpty();
        Json.Obj open = json("--matrix", BR17.toString());
        // 25 for the open path: computed by exhaustive dynamic programming, no published source
        assertThat(open.get("total_min")).contains(new Json.Num(new BigDecimal(25)));
        assertThat(open.get("bound_min")).contains(new Json.Num(new BigDecimal(25)));
    }

    @Test
    void people_see_each_change_what_is_saved_and_the_caution() throws IOException {
        HeardTerminal heard = HeardTerminal.ofNobody(false);
        run(heard, "--matrix", day().toString());
        assertThat(heard.lines())
                .anyMatch(line -> line.contains("plain bar"))
                .contains("15 min of changes; no order takes less.")
                .contains("Saved against the order as entered: 85 min.")
                .anyMatch(line -> line.contains("releases nothing"));
    }

    @Test
    void what_is_asked_is_kept() throws IOException {
        String day = day().toString();
        assertThat(order("--matrix", day)).containsExactly("plain bar", "oat bar", "nut bar");
        assertThat(order("--matrix", day, "--at", "oat bar=1")).containsExactly("oat bar", "plain bar", "nut bar");
        assertThat(order("--matrix", day, "--before", "nut bar=oat bar"))
                .containsExactly("plain bar", "nut bar", "oat bar");
        assertThat(order("--matrix", day, "--runs", "plain bar=30", "--runs", "oat bar=100", "--due", "nut bar=80"))
                .containsExactly("plain bar", "nut bar", "oat bar");
    }

    @Test
    void what_cannot_be_is_refused() throws IOException {
        String day = day().toString();
        assertThatThrownBy(() -> json("--matrix", day, "--runs", "oat bar=100", "--due", "oat bar=80"))
                .isInstanceOf(Refusal.class)
                .hasMessage("No order keeps to everything that is asked.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--at     | oat bar=4           | --at: expected PRODUCT=PLACE with a place from 1 to 3, found 'oat bar=4'",
                "--at     | oat bar             | --at: expected PRODUCT=VALUE, found 'oat bar'",
                "--at     | rye bar=1           | --at: there is no product 'rye bar' in the table",
                "--due    | oat bar=-1          | --due: expected PRODUCT=MINUTES with at most three decimals, found 'oat bar=-1'",
                "--before | oat bar=oat bar     | --before: these cannot each come before the next: oat bar",
            })
    void what_is_asked_badly_is_one_line(String option, String value, String said) throws IOException {
        String day = day().toString();
        assertThatThrownBy(() -> json("--matrix", day, option, value))
                .isInstanceOf(BadInput.class)
                .hasMessage(said);
    }

    @Test
    void places_that_loop_are_one_line() throws IOException {
        String day = day().toString();
        assertThatThrownBy(() -> json(
                        "--matrix",
                        day,
                        "--before",
                        "oat bar=nut bar",
                        "--before",
                        "nut bar=plain bar",
                        "--before",
                        "plain bar=oat bar"))
                .hasMessage("--before: these cannot each come before the next: nut bar, oat bar, plain bar");
        assertThatThrownBy(() -> json("--matrix", day, "--at", "oat bar=1", "--at", "nut bar=1"))
                .hasMessage("--at: a product and a place can each be fixed once, found 'nut bar=1' as well");
        assertThatThrownBy(() -> json("--matrix", day, "--closed", "--at", "oat bar=1"))
                .hasMessage(
                        "--closed: a round has no beginning, so nothing is fixed in it: give no place, date or order of two");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "none                  | t.csv: expected a row for each product, found none",
                "0,1;1                 | t.csv:2: expected 2 cells, one for each product, found 1",
                "0,1,2;1,0,2           | t.csv:1: expected 2 cells, one for each product, found 3",
                "0,-1;1,0              | t.csv:1: 2: expected minutes from 0 to 1000000 with at most three decimals, or nothing where the change must not be made, found '-1'",
                "0,1;1,0.0005          | t.csv:2: 2: expected minutes from 0 to 1000000 with at most three decimals, or nothing where the change must not be made, found '0.0005'",
                ",A,A;A,0,1;A,1,0      | t.csv:1: A: expected each product's name once, above its column",
                ",A,B;A,0,1;C,1,0      | t.csv:3: C: expected the name of a product that stands above a column",
                ",A,B;A,0,1;A,1,0      | t.csv:3: A: this product has a row already",
                ",A,B;A,0,1            | t.csv: expected a row for each of 2 products, found 1",
                ",A,B;A,0,1;B,soon,0   | t.csv:3: A: expected minutes from 0 to 1000000 with at most three decimals, or nothing where the change must not be made, found 'soon'",
            })
    void a_table_that_is_none_is_one_line(String text, String said) throws IOException {
        Path file = Files.writeString(folder.resolve("t.csv"), text == null ? "" : text.replace(';', '\n'));
        assertThatThrownBy(() -> json("--matrix", file.toString()))
                .isInstanceOf(BadInput.class)
                .hasMessage(said);
    }

    @Test
    void a_file_that_is_not_there_and_one_of_too_many_products_are_one_line() throws IOException {
        Path none = folder.resolve("none.csv");
        assertThatThrownBy(() -> json("--matrix", none.toString())).hasMessage(none + ": there is no such file");
        String row = IntStream.range(0, 401).mapToObj(i -> "1").collect(Collectors.joining(","));
        Path many = Files.write(
                folder.resolve("many.csv"),
                Stream.generate(() -> row).limit(401).toList());
        assertThatThrownBy(() -> json("--matrix", many.toString()))
                .hasMessage("many.csv: expected at most 400 products, found 401");
    }

    @Test
    void spreadsheets_with_semicolons_and_decimal_commas_are_read() throws IOException {
        Path file = Files.writeString(folder.resolve("t.csv"), "\uFEFF;A;B\r\nB;1,5;\r\nA;;x\r\n");
        assertThat(order("--matrix", file.toString())).containsExactly("B", "A");
    }

    private Path day() throws IOException {
        return Files.writeString(folder.resolve("day.csv"), DAY);
    }

    private List<String> order(String... arguments) {
        Json.Arr order = (Json.Arr) json(arguments).get("order").orElseThrow();
        return order.items().stream().map(item -> ((Json.Text) item).value()).toList();
    }

    private Json.Obj json(String... arguments) {
        HeardTerminal heard = HeardTerminal.ofNobody(true);
        run(heard, arguments);
        return (Json.Obj) heard.values().get(0);
    }

    private static void run(HeardTerminal heard, String... arguments) {
        String[] all =
                Stream.concat(Stream.of("order"), Arrays.stream(arguments)).toArray(String[]::new);
        List<RuntimeException> failures = new ArrayList<>();
        CommandLine line = new CommandLine(new PlantCommand(home.book, home.keeping, new OpenHouse()).commands(heard));
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            failures.add((RuntimeException) failure);
            return 2;
        });
        int code = line.execute(all);
        failures.forEach(failure -> {
            throw failure;
        });
        assertThat(code).isZero();
    }
}
