package wickbench.plant.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Visual;
import wickbench.plant.book.PlantHome;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.site.Sampling;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

class LineCommandsTest {
    private static final Sampling SEAL = new Sampling("L2 pump seal", new MethodId("milk-swab-wet"));

    @TempDir
    private Path folder;

    private PlantHome home;
    private HeardTerminal heard;

    @BeforeEach
    void open() {
        home = new PlantHome(folder.resolve("home"));
        PlantHome.demoMethods().forEach(method -> home.methods.issue(method, PlantHome.QUALITY.who()));
        assertThat(plant(false, "import", PlantHome.millFile().toString())).isZero();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void a_change_says_what_leaves_what_covers_it_and_why_it_must_not_be_made() throws IOException {
        assertThat(plant(false, "changeover", "whey", "plain", "--line", "L2")).isEqualTo(1);
        assertThat(heard.lines())
                .anyMatch(
                        line -> line.startsWith("MUST NOT BE MADE: no issued method sees milk (whey protein, powder)"))
                .anyMatch(line -> line.contains("milk-swab-wet v1 does not see it"));
        assertThat(plant(true, "changeover", "plain", "milk", "--line", "L2")).isZero();
        Json.Obj none = (Json.Obj) heard.values().get(0);
        assertThat(Schemas.published().errors("plant-changeover.schema.json", none.canonical()))
                .isEmpty();
        assertThat(none.get("tested")).contains(new Json.Bool(false));
        assertThat(plant(true, "changeover", "whey", "plain", "--line", "L2")).isEqualTo(1);
        assertThat(Schemas.published()
                        .errors(
                                "plant-changeover.schema.json",
                                heard.values().get(0).canonical()))
                .isEmpty();
        assertThat(plant(false, "matrix", "--line", "L2")).isZero();
        assertThat(heard.lines()).anyMatch(line -> line.contains("UNCOVERED") && line.contains("NOT STATED"));
    }

    @Test
    void the_order_of_a_line_forbids_what_is_not_validated_and_says_what_it_saves() throws IOException {
        assertThatThrownBy(
                        () -> plant(true, "order", "milk,plain,nut-milk", "--line", "L2", "--before", "nut-milk=plain"))
                .isInstanceOf(Refusal.class);
        validate("CP-2", "milk", "hazelnut");
        validate("CP-2n", "milk");
        assertThat(plant(true, "order", "nut-milk,plain,milk", "--line", "L2")).isZero();
        Json.Obj order = (Json.Obj) heard.values().get(0);
        assertThat(Schemas.published().errors("plant-order.schema.json", order.canonical()))
                .isEmpty();
        // from fewest to most allergens nothing leaves: two plain changes of 10 min
        assertThat(order.get("order")).contains(Json.texts(List.of("plain", "milk", "nut-milk")));
        assertThat(order.get("total_min")).contains(new Json.Num(java.math.BigDecimal.valueOf(20)));
        assertThat(order.get("optimal")).contains(new Json.Bool(true));
        assertThat(order.get("saving_min")).isPresent();
        assertThat(plant(true, "order", "whey,plain", "--line", "L2", "--before", "plain=whey"))
                .isZero();
        assertThatThrownBy(() -> plant(true, "order", "whey,plain", "--line", "L2", "--before", "whey=plain"))
                .isInstanceOf(Refusal.class);
        assertThat(plant(false, "cleans")).isZero();
        assertThat(heard.lines()).anyMatch(line -> line.startsWith("CP-2n") && line.contains("validated"));
    }

    private void validate(String clean, String... allergens) {
        home.keeping.open(
                new Series(clean, "nut-milk", List.of("hardest-soil"), Set.of(allergens), List.of(SEAL)),
                PlantHome.QUALITY);
        for (int i = 0; i < Series.PASSES; i++) {
            Instant cleaned = home.book.now();
            UUID read = home.read(SEAL.place(), SEAL.method().value(), false);
            home.keeping.ran(new SeriesRun(clean, Visual.CLEAN, List.of(read), cleaned), PlantHome.QUALITY);
        }
        home.keeping.confirm(new Confirmed(clean, LocalDate.parse("2027-03-01"), "three"), PlantHome.QUALITY);
    }

    @Test
    void a_clean_is_shown_to_work_by_commands() throws IOException {
        assertThat(plant(true, "worst", "CP-2")).isZero();
        assertThat(heard.values().get(0).canonical()).startsWith("[{\"product\":\"nut-milk\"");
        assertThatThrownBy(() ->
                        plant(false, "validate", "CP-2", "--product", "fish", "--point", "L2 pump seal=milk-swab-wet"))
                .hasMessageContaining("say with --reason");
        assertThat(plant(false, "validate", "CP-2", "--point", "L2 pump seal=milk-swab-wet"))
                .isZero();
        assertThat(plant(true, "ran", "CP-2", "--visual", "soiled")).isZero();
        assertThat(heard.values().get(0).canonical()).contains("\"why\":\"soiled\"");
        assertThat(Schemas.published()
                        .errors(
                                "plant-cleans.schema.json",
                                heard.values().get(0).canonical()))
                .isEmpty();
        assertThatThrownBy(() -> plant(false, "confirm", "CP-2", "--until", "2027-01-01", "--reason", "x"))
                .isInstanceOf(Refusal.class);
        assertThat(plant(false, "lapse", "CP-2", "--reason", "new nozzle")).isZero();
    }

    @Test
    void what_is_due_is_listed_and_answered_for() throws IOException {
        assertThat(plant(false, "changed", "nut-milk", "plain", "--line", "L2")).isZero();
        assertThat(plant(false, "maintained", "L2", "--what", "pump opened")).isZero();
        assertThat(plant(true, "due")).isZero();
        assertThat(Schemas.published()
                        .errors("plant-due.schema.json", heard.values().get(0).canonical()))
                .isEmpty();
        assertThat(((Json.Arr) heard.values().get(0)).items()).hasSize(4);
        assertThat(plant(true, "due", "--at", "2026-03-20")).isEqualTo(1);
        home.after(Duration.ofDays(30));
        assertThat(plant(false, "due")).isEqualTo(1);
        assertThat(heard.lines()).anyMatch(line -> line.startsWith("missed") && line.contains("L2-weekly@"));
        String key = "L2-weekly@2026-03-08T23:00:00Z";
        assertThat(plant(false, "excuse", key, "--reason", "line stood still")).isZero();
        assertThat(plant(false, "due", "--all")).isEqualTo(1);
        assertThat(heard.lines()).anyMatch(line -> line.startsWith("missed, answered for") && line.contains(key));
    }

    @Test
    void things_are_stated_one_by_one() throws IOException {
        assertThat(plant(false, "line", "L3", "--name", "Drinks", "--change", "5", "--area", "tank"))
                .isZero();
        assertThat(plant(
                        false,
                        "point",
                        "L3 valve",
                        "--line",
                        "L3",
                        "--surface",
                        "rubber",
                        "--hard",
                        "dead leg",
                        "--method",
                        "milk-swab-wet"))
                .isZero();
        assertThat(plant(false, "product", "oat", "--name", "Oat drink", "--line", "L3", "--holds", "oats:liquid"))
                .isZero();
        assertThat(plant(false, "product", "new", "--name", "New", "--line", "L3", "--not-stated"))
                .isZero();
        assertThat(plant(
                        false,
                        "clean",
                        "CP-3",
                        "--line",
                        "L3",
                        "--name",
                        "CIP",
                        "--how",
                        "in-place",
                        "--minutes",
                        "50"))
                .isZero();
        assertThat(plant(
                        false,
                        "rule",
                        "L3-w",
                        "--line",
                        "L3",
                        "--when",
                        "periodic",
                        "--point",
                        "L3 valve=milk-swab-wet"))
                .isZero();
        assertThat(plant(false, "retire", "product", "new", "--reason", "never made"))
                .isZero();
        assertThat(plant(true, "show")).isZero();
        assertThat(Schemas.published()
                        .errors("plant-1.schema.json", heard.values().get(0).canonical()))
                .isEmpty();
        assertThat(heard.values().get(0).canonical()).contains("oat").doesNotContain("\"new\"");
        assertThat(plant(false, "allergens", "--list", "us")).isZero();
        assertThat(heard.lines().get(0)).contains("FASTER");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"products\": [{\"product\": \"a\", \"name\": \"A\", \"lines\": [\"L2\"]}]} | bad.json: products[0]: allergens: are not stated; expected a list, [] where it holds none, or \"not_stated\": true where nobody knows",
                "{\"points\": [{\"point\": \"p\", \"line\": \"L7\", \"surface\": \"rubber\"}]} | point p: there is no line 'L7'",
                "{\"cleans\": [{\"clean\": \"c\", \"line\": \"L2\", \"name\": \"C\", \"how\": \"dry\", \"minutes\": 0}]} | bad.json: cleans[0]: minutes: expected a whole number from 1 to 10000, found 0",
                "{\"rules\": [{\"rule\": \"r\", \"line\": \"L2\", \"when\": \"periodic\"}]} | bad.json: rules[0]: points: expected at least one point with its method",
                "{\"lines\": 7} | bad.json: lines: expected a list",
                "{\"line\": []} | bad.json: line: is not a field of this format",
            })
    void a_bad_file_is_one_line_and_states_nothing(String text, String said) throws IOException {
        Path file = Files.writeString(folder.resolve("bad.json"), text);
        long before = home.journal.size(home.journal.stations().get(0));
        assertThatThrownBy(() -> plant(false, "import", file.toString()))
                .isInstanceOf(BadInput.class)
                .hasMessage(said);
        assertThat(home.journal.size(home.journal.stations().get(0))).isEqualTo(before);
    }

    @Test
    void a_product_of_which_nothing_is_said_is_asked_for_it() {
        assertThatThrownBy(() -> plant(false, "product", "x", "--name", "X", "--line", "L2"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--holds-none");
    }

    @Test
    void a_loop_of_places_and_too_many_products_are_one_line() throws IOException {
        assertThatThrownBy(() -> plant(
                        true,
                        "order",
                        "plain,milk",
                        "--line",
                        "L2",
                        "--before",
                        "plain=milk",
                        "--before",
                        "milk=plain"))
                .hasMessage("--before: these cannot each come before the next: milk, plain");
        String many = IntStream.range(0, 401).mapToObj(i -> "p" + i).collect(Collectors.joining(","));
        assertThatThrownBy(() -> plant(true, "order", many, "--line", "L2"))
                .hasMessage("PRODUCT: expected at most 400 products, found 401");
        assertThatThrownBy(() -> plant(true, "order", "plain,rye", "--line", "L2"))
                .hasMessage("PRODUCT: there is no product 'rye'");
    }

    @Test
    void four_hundred_products_get_an_order_with_its_bound() throws IOException {
        String products = IntStream.range(0, 400)
                .mapToObj(i -> "{\"product\":\"p%d\",\"name\":\"P\",\"lines\":[\"L2\"],\"allergens\":[%s]}"
                        .formatted(i, i % 3 == 0 ? "" : "{\"allergen\":\"milk\",\"form\":\"powder\"}"))
                .collect(Collectors.joining(","));
        Path file = Files.writeString(folder.resolve("many.json"), "{\"products\":[" + products + "]}");
        plant(false, "import", file.toString());
        String all = IntStream.range(0, 400).mapToObj(i -> "p" + i).collect(Collectors.joining(","));
        validate("CP-2", "milk");
        assertThat(plant(true, "order", all, "--line", "L2")).isZero();
        Json.Obj order = (Json.Obj) heard.values().get(0);
        assertThat(order.get("bound_min")).isPresent();
        assertThat(((Json.Arr) order.get("order").orElseThrow()).items()).hasSize(400);
    }

    private int plant(boolean json, String... arguments) {
        heard = HeardTerminal.of(PlantHome.QUALITY.who(), json);
        List<RuntimeException> failures = new ArrayList<>();
        CommandLine line = new CommandLine(new PlantCommand(home.book, home.keeping, new OpenHouse()).commands(heard));
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            failures.add((RuntimeException) failure);
            return 2;
        });
        int code = line.execute(arguments);
        failures.forEach(failure -> {
            throw failure;
        });
        return code;
    }
}
