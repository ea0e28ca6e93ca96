package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A technician calls every command of weight, alone and beside an open desktop, signing with the own passphrase and naming the
 * administrator: none passes (21 CFR 11.10(g), ASVS 5.0 V8).
 */
class EscalationByCommandTest {
    private static final Path DEMO = BuiltProduct.folder().resolve("demo");
    private static final String ADAS = "seven grey herons wade";
    private static final String BOS = "quiet lamps by the river";
    private static final String ONCE = "come in and choose yours";
    private static final int REFUSED = 3;

    /** The sets whose commands are called. */
    private static final List<String> SETS = List.of("base", "bench", "ledger");

    @TempDir
    static Path caches;

    private static StartedProgram program;

    @TempDir
    Path temporary;

    private Path home;
    private Path profile;
    private String corrected;

    @BeforeAll
    static void start() throws Exception {
        program = StartedProgram.of(SETS, caches);
    }

    @AfterAll
    static void stop() throws IOException {
        program.close();
    }

    @BeforeEach
    void found() throws Exception {
        home = temporary.resolve("home");
        profile = Files.writeString(temporary.resolve("profile.json"), """
                {"plant": "Feldmark Mill", "zone": "Europe/Vienna", "double_read": 0, "review_days": 7,
                 "outcome_order": ["positive-above-range", "positive", "invalid", "negative"], "retention_years": 2}""");
        done(as("ada", "", "people", "add", "ada", "--name", "Ada Brook", "--role", "administrator"));
        done(as("ada", ADAS + "\n" + ADAS, "people", "passphrase"));
        done(as("ada", ADAS, "people", "add", "bo", "--name", "Bo Lind", "--role", "operator,trainer"));
        done(as("ada", ADAS, "people", "add", "cy", "--name", "Cy Ferran", "--role", "operator"));
        done(as("ada", lines(ADAS, ONCE, ONCE), "people", "reset", "bo"));
        done(as("bo", lines(ONCE, BOS, BOS), "people", "passphrase"));
        done(as("ada", ADAS, issue(methods().toArray(String[]::new))));
        done(as("ada", "", "record", "--sheet", DEMO.resolve("run-sheet.csv").toString()));
        corrected = Stream.of(journal().split("\n"))
                .filter(line -> line.contains("\"kind\":\"reading.recorded\""))
                .map(line -> line.replaceFirst(".*\"id\":\"([0-9a-f-]{36})\".*", "$1"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void none_passes_alone() throws Exception {
        assertThat(passed()).isEmpty();
    }

    @Test
    void none_passes_beside_an_open_desktop() throws Exception {
        try (var desktop = HoldingDesktop.open(new Program(temporary), home)) {
            assertThat(passed()).isEmpty();
            assertThat(desktop.process().isAlive()).isTrue();
        }
    }

    /** Returns the calls that did anything but be refused, or that left an entry. */
    private List<String> passed() throws Exception {
        String before = entries();
        List<String> passed = new ArrayList<>();
        for (String[] call : calls()) {
            note(passed, "bo", call);
        }
        // under the administrator's name, but with one's own passphrase or none
        note(passed, "ada", call("people", "add", "eve", "--name", "Eve", "--role", "administrator"));
        note(passed, "ada", call("method", "withdraw", "milk-rinse", "--reason", "because"));
        assertThat(entries()).isEqualTo(before);
        return passed;
    }

    private void note(List<String> passed, String who, String... call) throws Exception {
        String secret = call[1].equals("pin") ? "1234" : BOS;
        Answer answer = as(who, lines(BOS, secret, secret, BOS, BOS), call);
        if (answer.code() != REFUSED) {
            passed.add(who + " " + String.join(" ", call) + ": " + answer);
        }
    }

    private List<String[]> calls() throws IOException {
        String method = methods().get(0);
        return List.of(
                call("people", "add", "eve", "--name", "Eve", "--role", "administrator"),
                call("people", "role", "bo", "--role", "administrator"),
                call("people", "pin", "cy"),
                call("people", "badge", "cy", "--says", "0815"),
                call("people", "reset", "cy"),
                call("people", "recover", "bo", "--witness", "ada", "--reason", "because"),
                call("people", "recover", "bo", "--code", "--witness", "cy", "--reason", "because"),
                call("people", "envelope"),
                call("people", "forget", "cy"),
                call("profile", "issue", profile.toString(), "--sign"),
                call("feature", "remove", "training"),
                issue(method),
                call("method", "withdraw", "milk-rinse", "--reason", "because", "--sign"),
                call("method", "withdraw", "milk-rinse", "--reason", "because"),
                call("ledger", "correct", corrected, "--reason", "because", "--batch", "B-7"),
                call("ledger", "review", corrected, "--sign"),
                call("ledger", "decide", corrected, "hold", "--reason", "because", "--sign"),
                call("ledger", "plan", "L2", "--point", "kettle=hazelnut-swab-dry", "--reason", "because", "--sign"),
                call("ledger", "base", "--from", "2026-11-01", "--to", "2026-11-20", "--reason", "because", "--sign"),
                call("ledger", "release", "line", "L2", "--reason", "because", "--sign"),
                call("ledger", "release", "batch", "B-7", "--reason", "because", "--sign"));
    }

    /** What was recorded, but for the wrong passphrases that were heard. */
    private String entries() throws IOException {
        return Stream.of(journal().split("\n"))
                .filter(line -> !line.contains("\"kind\":\"person.sign-in-failed\""))
                .filter(line -> !line.contains("\"kind\":\"person.signed-in\""))
                .toList()
                .toString();
    }

    private String journal() throws IOException {
        try (Stream<Path> files = Files.walk(home.resolve("journal"))) {
            return Files.readString(files.filter(file -> file.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow());
        }
    }

    private static String[] issue(String... files) {
        return Stream.of(Stream.of("method", "issue"), Stream.of(files), Stream.of("--sign"))
                .flatMap(part -> part)
                .toArray(String[]::new);
    }

    private static String[] call(String... words) {
        return words;
    }

    private static String lines(String... typed) {
        return String.join("\n", typed) + "\n";
    }

    private Answer as(String who, String typed, String... call) throws ReflectiveOperationException {
        List<String> line = new ArrayList<>(List.of("--home", home.toString(), "--as", who, "--passphrase-stdin"));
        line.addAll(List.of(call));
        return program.told(typed, line.toArray(String[]::new));
    }

    private static void done(Answer answer) {
        assertThat(answer.code()).as(answer.err()).isZero();
    }

    private static List<String> methods() throws IOException {
        try (Stream<Path> files = Files.list(DEMO.resolve("methods"))) {
            return files.map(Path::toString)
                    .filter(file -> file.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
