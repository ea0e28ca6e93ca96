package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program gains a set while it runs, loses it, and gains it again: what is offered follows, and what was recorded stays. */
class RunningPartsTest {
    private static final Path DEMO = BuiltProduct.folder().resolve("demo");
    private static final int REFUSED = 3;

    @TempDir
    Path temporary;

    private StartedProgram program;
    private Path home;

    @Test
    void training_comes_goes_and_comes_again_in_a_running_program() throws Exception {
        PinnedProduct product = PinnedProduct.lay(temporary);
        home = temporary.resolve("home");
        try (StartedSet set = StartedSet.of(product.folder(), List.of("base", "bench"), temporary)) {
            program = new StartedProgram(set);
            set.nameHome(home);
            done("people", "add", "op-01", "--name", "Ada Brook", "--role", "administrator,trainer");
            done("people", "add", "op-02", "--name", "Bo Lind", "--role", "operator");
            done("method", "issue", DEMO.resolve("methods/milk-rinse.json").toString());
            done(
                    "feature",
                    "pack",
                    "training",
                    file("training.zip"),
                    "--key",
                    product.key().toString());
            assertThat(offered(set)).doesNotContain("training", "round");
            assertThat(trainingSays()).isEqualTo("not checked");

            assertThat(done("feature", "add", file("training.zip")))
                    .contains("pages training; commands round, training");
            assertThat(offered(set)).contains("training", "round", "page training");
            done("training", "authorise", "op-02", "--method", "milk-rinse", "--reason", "seen at the bench");
            assertThat(trainingSays()).isEqualTo("cleared");
            String recorded = journal();

            done("feature", "remove", "training");
            assertThat(offered(set)).doesNotContain("training", "round", "page training");
            assertThat(call("training", "matrix").code()).isNotZero();
            assertThat(trainingSays()).isEqualTo("not checked");
            assertThat(journal()).startsWith(recorded);

            done("feature", "add", "training");
            assertThat(done("training", "matrix")).contains("Bo Lind");
            assertThat(trainingSays()).isEqualTo("cleared");
            assertThat(call("feature", "add", file("training.zip"))).satisfies(again -> {
                assertThat(again.code()).isEqualTo(REFUSED);
                assertThat(again.err().lines()).singleElement().asString().contains("runs already");
            });
            assertThat(journal()).startsWith(recorded).contains("part.added", "part.removed", "part.refused");
            assertThat(done("feature", "check"))
                    .contains("bundles run", "services have what they need", "MiB are free");
            assertThat(set.notRunning()).isEmpty();
            assertThat(set.components().unsatisfied(Set.of())).isEmpty();
        }
    }

    private String file(String name) {
        return temporary.resolve(name).toString();
    }

    private String done(String... arguments) throws ReflectiveOperationException {
        Answer answer = call(arguments);
        assertThat(answer.code()).as(answer.err()).isZero();
        return answer.out();
    }

    private Answer call(String... arguments) throws ReflectiveOperationException {
        List<String> line = new ArrayList<>(List.of("--home", home.toString(), "--as", "op-01"));
        line.addAll(List.of(arguments));
        return program.within(line.toArray(String[]::new));
    }

    private String journal() throws IOException {
        try (Stream<Path> files = Files.walk(home.resolve("journal"))) {
            return Files.readString(files.filter(file -> file.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow());
        }
    }

    /** What the gate of training says to a start, or who is told that nobody was there to ask. */
    private String trainingSays() throws ReflectiveOperationException {
        String answers = call("bench", "may", "milk-rinse", "--lot", "L-1", "--operator", "op-02")
                .out();
        return answers.lines()
                .filter(line -> line.startsWith("training "))
                .map(line -> line.split(" {2,}")[1])
                .findFirst()
                .orElse("");
    }

    private static List<String> offered(StartedSet set) throws Exception {
        List<String> offered = new ArrayList<>(set.commands());
        PagesComeAndGoTest.ids(set.host().context()).forEach(page -> offered.add("page " + page));
        return offered;
    }
}
