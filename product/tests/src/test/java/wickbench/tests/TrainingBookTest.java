package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The training book from outside: a whole round alone, and what it says to bench and ledger, by the program as it is shipped. */
class TrainingBookTest {
    private static final Path DEMO = BuiltProduct.folder().resolve("demo");
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final String METHOD = "hazelnut-swab-dry";
    private static final List<String> READERS = List.of("op-1", "op-2", "op-3", "op-4");
    private static final List<String> EXPERTS = List.of("ex-1", "ex-2");
    private static final Pattern PERSON = Pattern.compile("\"person\":\"op-1\"[^\\]]*");
    private static final int FOUND_WANTING = 1;
    private static final int BAD_INPUT = 2;
    private static final int REFUSED = 3;

    /** The home with its people as every test finds it, and the programs that are called. */
    @TempDir
    static Path shared;

    private static StartedProgram trainingOnly;
    private static StartedProgram complete;

    @TempDir
    Path temporary;

    private StartedProgram program = trainingOnly;

    @BeforeAll
    static void found() throws Exception {
        trainingOnly = StartedProgram.of(List.of("base", "training"), shared);
        complete = StartedProgram.of(List.of("complete"), shared);
        new TrainingBookTest().people(shared);
    }

    @AfterAll
    static void end() throws IOException {
        trainingOnly.close();
        complete.close();
    }

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.walk(shared.resolve("home"))) {
            for (Path file : files.toList()) {
                Files.copy(file, temporary.resolve(shared.relativize(file).toString()));
            }
        }
    }

    private void people(Path folder) throws Exception {
        temporary = folder;
        done("station", "found", "desk-1", "--zone", ZONE.getId());
        done("people", "add", "ada", "--name", "Ada Brook", "--role", "administrator", "--as", "ada");
        done("people", "add", "tess", "--name", "Tess Varga", "--role", "trainer", "--as", "ada");
        for (String reader : READERS) {
            done("people", "add", reader, "--name", "Reader " + reader, "--role", "operator", "--as", "ada");
        }
        for (String expert : EXPERTS) {
            done("people", "add", expert, "--name", "Expert " + expert, "--role", "reviewer", "--as", "ada");
        }
    }

    @Test
    void alone_it_runs_a_whole_round_from_its_design_to_the_certificate() throws Exception {
        Answer design =
                done("--json", "round", "design", "--blanks", "4", "--near", "8", "--clear", "3", "--invalid", "1");
        assertThat(design.out())
                .contains("\"near_missed\":0")
                .contains("\"poor\":")
                .contains("\"fails\":");

        open();
        List<String> codes = codes();
        Map<String, String> kinds = kinds();
        Answer early = call("round", "close", "r-1");
        assertThat(early.code()).isEqualTo(REFUSED);
        assertThat(early.err()).contains("sealed until everybody has called", "ex-1, ex-2, op-1, op-2, op-3, op-4");

        List<String> shuffled = new ArrayList<>(codes);
        java.util.Collections.reverse(shuffled);
        Answer disordered = call("round", "call", "r-1", "--reader", "op-1", "--sheet", sheet(shuffled, kinds, true));
        assertThat(disordered.code()).isEqualTo(BAD_INPUT);
        assertThat(disordered.err()).contains("sheet", ":2: code: expected strip " + codes.get(0), "another order");

        for (String expert : EXPERTS) {
            done("round", "call", "r-1", "--reader", expert, "--sheet", sheet(codes, kinds, true));
        }
        for (String reader : READERS) {
            boolean sees = !reader.equals("op-4");
            done("round", "call", "r-1", "--reader", reader, "--sheet", sheet(codes, kinds, sees));
        }
        Answer twice = call("round", "call", "r-1", "--reader", "op-1", "--sheet", sheet(codes, kinds, true));
        assertThat(twice.code()).isEqualTo(REFUSED);
        assertThat(twice.err()).contains("op-1 has called strip");

        done("round", "close", "r-1");
        Answer own = call("round", "score", "r-1", "--as", "op-1");
        assertThat(own.code()).isEqualTo(REFUSED);
        Answer scored = call("--json", "round", "score", "r-1");
        assertThat(scored.code()).isEqualTo(FOUND_WANTING);
        assertThat(scored.out())
                .contains("\"key_holds\":true")
                .contains("\"passed\":true,\"reader\":\"op-1\"")
                .contains("\"passed\":false,\"reader\":\"op-4\"");
        assertThat(call("round", "score", "r-1").code()).isEqualTo(REFUSED);

        for (String reader : READERS) {
            done("training", "seen", "r-1", "--as", reader);
        }
        done("training", "authorise", "op-1", "--method", METHOD, "--reason", "round r-1 passed");
        printed("training", "certificate", "op-1", "--out", file("certificate.pdf"));
        printed("training", "matrix", "--out", file("matrix.pdf"));
        printed("training", "person", "op-1", "--out", file("person.pdf"));
        printed("round", "show", "r-1", "--out", file("round.pdf"));
        assertThat(call("training", "certificate", "op-4", "--out", file("no.pdf"))
                        .code())
                .isEqualTo(REFUSED);
        assertThat(temporary.resolve("no.pdf")).doesNotExist();
        assertThat(done("index", "verify").code()).isZero();
        // and so says a process of its own
        Answer verified = new Program(temporary).call(line("journal", "verify"));
        assertThat(verified.code()).as(verified.toString()).isZero();
    }

    @Test
    void a_lapsed_operator_starts_nothing_but_under_an_authorised_observer_and_a_suspension_reaches_the_ledger()
            throws Exception {
        program = complete;
        done("method", "issue", DEMO.resolve("methods/" + METHOD + ".json").toString(), "--as", "ada");
        assertThat(may("op-1").code()).isZero();

        String today = LocalDate.now(ZONE).toString();
        done("training", "authorise", "op-1", "--method", METHOD, "--until", today, "--reason", "round passed");
        assertThat(may("op-1").code()).isZero();
        Answer never = may("op-2");
        assertThat(never.code()).isEqualTo(REFUSED);
        assertThat(never.err()).contains("not authorised for this method");
        assertThat(may("op-2", "--observer", "op-1").code()).isZero();
        assertThat(may("op-2", "--observer", "op-3").code()).isEqualTo(REFUSED);

        // a newer version comes into force: what was learnt of the older one no longer does
        done(
                "method",
                "issue",
                DEMO.resolve("methods/edition-2/" + METHOD + ".json").toString(),
                "--as",
                "ada");
        Answer lapsed = may("op-1");
        assertThat(lapsed.code()).isEqualTo(REFUSED);
        assertThat(lapsed.err()).contains("authorisation had lapsed");
        done("training", "acknowledge", METHOD, "--as", "op-1");
        assertThat(may("op-1").code()).isZero();

        done("record", "--sheet", strip("op-1"), "--as", "op-1");
        assertThat(done("--json", "ledger", "list").out()).contains("\"outcome\":\"negative\"");
        String since = Instant.now().minus(1, ChronoUnit.DAYS).toString();
        assertThat(done("training", "suspend", "op-1", "--since", since, "--reason", "overlooks faint lines")
                        .out())
                .contains("SUSPENDED", "overlooks faint lines");
        assertThat(may("op-1").code()).isEqualTo(REFUSED);
        assertThat(done("ledger", "list", "--in-doubt").out()).contains("Negative, in doubt");
        assertThat(done("bench", "owed").out()).contains("its operator was suspended");

        done("training", "restore", "op-1", "--method", METHOD, "--reason", "drilled, round passed");
        assertThat(may("op-1").code()).isZero();
        Matcher matrix = PERSON.matcher(done("--json", "training", "matrix").out());
        assertThat(matrix.find()).isTrue();
        assertThat(done("index", "verify").code()).isZero();
    }

    @Test
    void roles_are_asked_below_every_screen() throws Exception {
        long before = entries();
        for (String[] call : List.<String[]>of(
                new String[] {"training", "authorise", "op-2", "--method", METHOD, "--reason", "x"},
                new String[] {"training", "suspend", "op-2", "--method", METHOD, "--reason", "x"},
                new String[] {"training", "terms", "--months", "99"},
                new String[] {"training", "sight", "op-2", "--vision", "normal", "--how", "x"},
                new String[] {"training", "light", "bench 1", "--lux", "900"},
                new String[] {
                    "round",
                    "open",
                    "r-9",
                    "--blanks",
                    "3",
                    "--method",
                    METHOD,
                    "--readers",
                    "op-2",
                    "--key-by",
                    "x",
                    "--format",
                    "sandwich",
                    "--develop",
                    "60",
                    "--window",
                    "60"
                })) {
            List<String> line = new ArrayList<>(List.of(call));
            line.addAll(List.of("--as", "op-1"));
            Answer refused = call(line.toArray(String[]::new));
            assertThat(refused.code()).as(String.join(" ", line) + refused).isEqualTo(REFUSED);
        }
        assertThat(entries()).isEqualTo(before);
        assertThat(temporary.resolve("home/training/r-9.key.json")).doesNotExist();
    }

    private void open() throws Exception {
        done(
                "round",
                "open",
                "r-1",
                "--blanks",
                "4",
                "--near",
                "8",
                "--clear",
                "3",
                "--invalid",
                "1",
                "--method",
                METHOD,
                "--format",
                "sandwich-hook",
                "--develop",
                "1",
                "--window",
                "3600",
                "--readers",
                String.join(",", READERS),
                "--experts",
                String.join(",", EXPERTS),
                "--key-by",
                "made by the laboratory, read blind by two experts",
                "--sheet",
                file("blank.csv"),
                "--labels",
                file("labels.csv"));
    }

    /** The codes as they stand on the sheet that readers get. */
    private List<String> codes() throws IOException {
        return rows("blank.csv").stream().map(row -> row[0]).toList();
    }

    /** What each code hides, by the list of who prepares the strips. */
    private Map<String, String> kinds() throws IOException {
        Map<String, String> kinds = new HashMap<>();
        rows("labels.csv").forEach(row -> kinds.put(row[0], row[2]));
        return kinds;
    }

    private String file(String name) {
        return temporary.resolve(name).toString();
    }

    private List<String[]> rows(String file) throws IOException {
        return Files.readAllLines(temporary.resolve(file)).stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
    }

    /** Fills a sheet in as somebody who sees every faint line, or who sees none. */
    private String sheet(List<String> codes, Map<String, String> kinds, boolean faint) throws IOException {
        Instant read = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        StringBuilder text = new StringBuilder("code;control;hook;test;outcome;started;read\n");
        for (String code : codes) {
            String kind = kinds.get(code);
            boolean line = kind.equals("clear") || kind.equals("near-limit") && faint;
            text.append(String.join(
                            ";",
                            code,
                            kind.equals("invalid") ? "not-seen" : "seen",
                            "seen",
                            line ? "faint" : "not-seen",
                            "",
                            read.minusSeconds(2).toString(),
                            read.toString()))
                    .append('\n');
        }
        Path file = Files.createTempFile(temporary, "sheet", ".csv");
        return Files.writeString(file, text).toString();
    }

    private Answer may(String operator, String... more) throws Exception {
        List<String> line = new ArrayList<>(List.of("bench", "may", METHOD, "--lot", "HZ-1", "--as", operator));
        line.addAll(List.of(more));
        return call(line.toArray(String[]::new));
    }

    private String strip(String operator) throws IOException {
        Instant started = Instant.now().minus(1, ChronoUnit.HOURS).truncatedTo(ChronoUnit.SECONDS);
        String row = String.join(
                ",",
                "S-1",
                "L2 kettle rim",
                METHOD,
                "swab-dry",
                "HZ-1",
                operator,
                started.minus(1, ChronoUnit.HOURS).toString(),
                started.minusSeconds(120).toString(),
                "62",
                started.toString(),
                started.plusSeconds(312).toString(),
                "control hook");
        Path file = Files.createTempFile(temporary, "strips", ".csv");
        return Files.writeString(
                        file,
                        "sample,place,method,route,lot,operator,out_of_fridge,extracted,shaken_s,started,read,seen\n"
                                + row + "\n")
                .toString();
    }

    private void printed(String... arguments) throws Exception {
        done(arguments);
        byte[] pdf = Files.readAllBytes(Path.of(arguments[arguments.length - 1]));
        assertThat(new String(pdf, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
    }

    private long entries() throws IOException {
        return Files.readAllLines(temporary.resolve("home/journal/desk-1/entries-000000.jsonl"))
                .size();
    }

    private Answer done(String... arguments) throws Exception {
        Answer answer = call(arguments);
        assertThat(answer.code())
                .as(String.join(" ", arguments) + "\n" + answer)
                .isZero();
        return answer;
    }

    private Answer call(String... arguments) throws Exception {
        return program.call(line(arguments));
    }

    /** The whole line: at the home of this test, and by the trainer where nobody else is named. */
    private String[] line(String... arguments) {
        List<String> line =
                new ArrayList<>(List.of("--home", temporary.resolve("home").toString()));
        List<String> own = List.of(arguments);
        if (!own.contains("--as")) {
            line.addAll(List.of("--as", "tess"));
        }
        line.addAll(own);
        return line.toArray(String[]::new);
    }
}
