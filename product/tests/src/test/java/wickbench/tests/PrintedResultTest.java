package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A result goes from a sheet through the journal onto paper, by the program as it is shipped. */
class PrintedResultTest {

    @TempDir
    Path temporary;

    @Test
    void a_recorded_result_prints_on_a_site_without_bench_and_ledger_and_the_journal_still_holds() throws Exception {
        Path demo = BuiltProduct.folder().resolve("demo");
        List<String> issue = new ArrayList<>(List.of("method", "issue"));
        issue.addAll(methods(demo.resolve("methods")));
        done(call(issue.toArray(String[]::new)));
        done(call("record", "--sheet", demo.resolve("run-sheet.csv").toString()));

        Path file = temporary.resolve("result.pdf");
        Answer printed = call("--features", "base", "report", "result", "station-1:8", "--out", file.toString());
        done(printed);
        // the libraries that print must not talk on the way
        assertThat(printed.err()).isEmpty();
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        done(call("journal", "verify"));
    }

    @Test
    void results_leave_the_house_in_every_form() throws Exception {
        Path demo = BuiltProduct.folder().resolve("demo");
        List<String> issue = new ArrayList<>(List.of("method", "issue"));
        issue.addAll(methods(demo.resolve("methods")));
        done(call(issue.toArray(String[]::new)));
        done(call("record", "--sheet", demo.resolve("run-sheet.csv").toString()));
        for (String form : List.of("csv", "jsonl", "xlsx", "pdf")) {
            done(call(
                    "ledger",
                    "export",
                    "--out",
                    temporary.resolve("results." + form).toString()));
        }
        // nineteen strips, and the header
        assertThat(Files.readAllLines(temporary.resolve("results.csv"))).hasSize(20);
        assertThat(Files.readAllLines(temporary.resolve("results.jsonl")))
                .hasSize(19)
                .allMatch(line -> line.startsWith("{"));
        assertThat(Files.readAllBytes(temporary.resolve("results.xlsx"))).startsWith('P', 'K');
        assertThat(Files.readAllBytes(temporary.resolve("results.pdf"))).startsWith('%', 'P', 'D', 'F');
    }

    private Answer call(String... arguments) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--home", temporary.resolve("home").toString()));
        return new Program(temporary).call(all.toArray(String[]::new));
    }

    private static void done(Answer answer) {
        assertThat(answer.code()).as(answer.err()).isZero();
    }

    private static List<String> methods(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::toString)
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
