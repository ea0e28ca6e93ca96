package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static wickbench.ledger.services.Quality.BATCH;
import static wickbench.ledger.services.Quality.HOPPER;
import static wickbench.ledger.services.Quality.NOZZLE;
import static wickbench.ledger.services.Quality.RELEASER;
import static wickbench.ledger.services.Quality.REVIEWER;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.method.Seen;
import wickbench.api.progress.Progress;
import wickbench.ledger.Filter;
import wickbench.ledger.Sort;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.papers.Packing;
import wickbench.proof.TreeHash;
import wickbench.report.sheet.CsvPrinter;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;

/**
 * The index is changed with a database tool, or the journal with an editor, so that a batch looks as if it might go: it does not, and
 * nothing of it is reviewed, exported, reported or packed without a word.
 */
class FalsifiedTest {
    private static final Instant LATER = Strips.START.plusSeconds(7200);
    private static final String STATEMENT = "\"ledger\".statement";

    private Quality quality;
    private Path out;

    @BeforeEach
    void test() throws IOException {
        quality = Quality.tested();
        out = Files.createTempDirectory(quality.site.home.folder(), "out");
    }

    @AfterEach
    void close() {
        quality.close();
    }

    /** What keeps the batch, and how somebody with a database tool makes it look as if nothing did. */
    private record Attack(String keeps, Keeping keeping, String sql, int rows) {}

    private interface Keeping {
        void keep(Quality quality);
    }

    private static Map<String, Attack> attacks() {
        Map<String, Attack> all = new LinkedHashMap<>();
        all.put(
                "an outside report is taken out",
                new Attack(
                        "release.outside-detected",
                        made -> made.reported(LATER),
                        "delete from \"acts\".act where kind = 'outside.reported' and about = 'batch B-7'",
                        1));
        all.put(
                "the newest plan is taken out",
                new Attack(
                        "release.point-missing",
                        made -> made.plan(NOZZLE, HOPPER, new Point("chute", NOZZLE.method())),
                        "delete from \"acts\".act where kind = 'release.planned' and seq = (select max(seq) from \"acts\".act"
                                + " where kind = 'release.planned')",
                        1));
        all.put(
                "an Invalid is moved to another batch",
                new Attack(
                        "release.point-invalid",
                        FalsifiedTest::invalid,
                        "update " + STATEMENT + " set batch = 'B-8' where sample = 'S-3'",
                        1));
        all.put(
                "an Invalid is taken out",
                new Attack(
                        "release.point-invalid",
                        FalsifiedTest::invalid,
                        "delete from " + STATEMENT + " where sample = 'S-3'",
                        1));
        all.put(
                "a strip is moved to the point that was never tested",
                new Attack(
                        "release.point-missing",
                        FalsifiedTest::twice,
                        "update " + STATEMENT + " set place = 'chute' where sample = 'S-4'",
                        1));
        return all;
    }

    static Set<String> names() {
        return attacks().keySet();
    }

    /** One point more is planned, and another is tested twice. */
    private static void twice(Quality quality) {
        quality.plan(NOZZLE, HOPPER, new Point("chute", NOZZLE.method()));
        quality.negative("S-4", NOZZLE, LATER);
    }

    private static void invalid(Quality quality) {
        quality.read("S-3", HOPPER, LATER, Seen.NOT_SEEN, Seen.NOT_SEEN, Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("names")
    @Meets("21 CFR 11.10(a)")
    void a_batch_goes_by_no_row_that_the_journal_does_not_have(String name) {
        Attack attack = attacks().get(name);
        attack.keeping().keep(quality);
        assertThat(quality.reasons()).contains(attack.keeps());
        quality.behindOurBack(attack.sql(), attack.rows());
        assertThat(quality.reasons()).doesNotContain(attack.keeps());
        assertThat(quality.refused(() -> quality.release(RELEASER))).startsWith("release.");
        Throwable told = catchThrowable(() -> quality.release(RELEASER));
        assertThat(told.getMessage()).contains("changed behind the program").contains("index rebuild");
        Throwable packing = catchThrowable(this::pack);
        assertThat(packing).isInstanceOf(Refusal.class);
        assertThat(packing.getMessage()).contains("changed behind the program");
        assertThat(out.resolve("pack")).doesNotExist();

        quality.site.index.rebuild(Progress.NONE);
        assertThat(quality.reasons()).contains(attack.keeps());
        assertThat(quality.refused(() -> quality.release(RELEASER))).startsWith("release.");
    }

    @Test
    void a_batch_that_may_go_goes_before_and_after_a_rebuild_and_the_check_lasts_while_the_file_is_open() {
        assertThat(quality.site.results.falsified(Progress.NONE)).isEmpty();
        // nothing is made anew a second time, so nothing can be stopped
        assertThat(quality.site.results.falsified((done, total) -> total < 0 || done == total))
                .isEmpty();
        quality.behindOurBack("update " + STATEMENT + " set lot = 'Z9' where sample = 'S-2'", 1);
        assertThat(quality.site.results.falsified(Progress.NONE))
                .singleElement()
                .matches(text -> text.contains("1 rows"));
        assertThat(quality.site.results.falsified(Progress.NONE)).hasSize(1);
        quality.site.index.rebuild(Progress.NONE);
        quality.release(RELEASER);
        assertThat(quality.releasing.standing(Subject.batch(BATCH)).released()).hasSize(1);
    }

    @Test
    void a_falsified_row_is_neither_reviewed_nor_exported_nor_reported() throws IOException {
        quality.behindOurBack("update " + STATEMENT + " set place = 'elsewhere' where sample = 'S-2'", 1);
        String id = quality.site.results.page(Filter.ALL, Sort.NEWEST_FIRST, Optional.empty(), 9).rows().stream()
                .filter(row -> row.sample().equals("S-2"))
                .findFirst()
                .orElseThrow()
                .id()
                .toString();
        assertThat(said("review", id)).contains("otherwise of strip S-2 than the journal");
        assertThat(said("export", "--out", out.resolve("all.csv").toString()))
                .contains("otherwise of strip S-2 (elsewhere) than the journal");
        assertThat(out.resolve("all.csv")).doesNotExist();
        assertThat(refusedReport()).contains("otherwise of strip S-2 (elsewhere) than the journal");

        quality.site.index.rebuild(Progress.NONE);
        assertThat(said("export", "--out", out.resolve("all.csv").toString())).isEmpty();
        assertThat(Files.readString(out.resolve("all.csv"))).contains("hopper").doesNotContain("elsewhere");
    }

    @ParameterizedTest
    @MethodSource("hands")
    @Meets("21 CFR 11.10(e)")
    void nothing_leaves_a_journal_that_contradicts_its_seal(String hand) throws IOException {
        quality.site.journal.checkpoint();
        Path files = stationFolder();
        switch (hand) {
            case "an entry is changed" -> rewrite(files, false);
            case "the chain is made anew" -> rewrite(files, true);
            case "a checkpoint is forged" -> forge(files.resolve("checkpoints.jsonl"));
            case "the key is swapped" -> swapKey();
            default -> throw new IllegalArgumentException(hand);
        }
        assertThat(quality.refused(() -> quality.release(RELEASER))).matches("release\\.differs|journal\\.tampered");
        assertThat(catchThrowable(() -> quality.release(RELEASER)).getMessage()).contains("contradicts its seal");
        assertThat(catchThrowable(this::pack).getMessage()).contains("contradicts its seal");
        assertThat(said("export", "--out", out.resolve("all.csv").toString())).contains("contradicts its seal");
        assertThat(refusedReport()).contains("contradicts its seal");
        assertThat(out).isEmptyDirectory();
    }

    static List<String> hands() {
        return List.of("an entry is changed", "the chain is made anew", "a checkpoint is forged", "the key is swapped");
    }

    private Path stationFolder() {
        return quality.site
                .home
                .folder()
                .resolve("journal")
                .resolve(quality.site.journal.stations().get(0).value());
    }

    /** Turns what was seen in the last strip into something else, and makes the links behind it anew or not. */
    private static void rewrite(Path files, boolean links) throws IOException {
        Path segment = files.resolve("entries-000000.jsonl");
        List<String> was = Files.readAllLines(segment);
        List<String> now = new ArrayList<>();
        TreeHash hash = new TreeHash();
        boolean changed = false;
        for (int at = 0; at < was.size(); at++) {
            String line = was.get(at);
            if (changed && links) {
                line = line.replace(leaf(hash, was.get(at - 1)), leaf(hash, now.get(at - 1)));
            } else if (!changed && line.contains("filler nozzle") && line.contains("reading.recorded")) {
                line = line.replace("filler nozzle", "filler nuzzle");
                changed = true;
            }
            now.add(line);
        }
        assertThat(changed).isTrue();
        Files.writeString(segment, String.join("\n", now) + "\n");
    }

    private static String leaf(TreeHash hash, String line) {
        return Hash.of(hash.leaf(line.getBytes(StandardCharsets.UTF_8))).hex();
    }

    /** Another signature under the newest checkpoint: that of the one before it, or one whose first letter was changed. */
    private static void forge(Path checkpoints) throws IOException {
        List<String> lines = Files.readAllLines(checkpoints);
        String last = lines.get(lines.size() - 1);
        int at = last.lastIndexOf("\\n\",\"offset\"") - 20;
        char other = last.charAt(at) == 'A' ? 'B' : 'A';
        lines.set(lines.size() - 1, last.substring(0, at) + other + last.substring(at + 1));
        Files.writeString(checkpoints, String.join("\n", lines) + "\n");
    }

    private void swapKey() throws IOException {
        try (Quality other = new Quality()) {
            Files.copy(key(other), key(quality), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Path key(Quality of) {
        StationId station = of.site.journal.stations().get(0);
        return of.site.home.folder().resolve("keys").resolve(station + ".pem");
    }

    private void pack() {
        quality.doors
                .packing()
                .pack(new Packing.Wanted(Filter.ALL, false, out.resolve("pack")), REVIEWER, Progress.NONE);
    }

    private String refusedReport() {
        return catchThrowable(() -> quality.site.papers.results(Filter.ALL)).getMessage();
    }

    /** Returns what a command is refused with; empty when it is not. */
    private String said(String... args) {
        String[] text = {""};
        HeardTerminal terminal = HeardTerminal.of(REVIEWER, false);
        new CommandLine(quality.command(terminal, List.of(new CsvPrinter())))
                .setExecutionExceptionHandler((e, called, result) -> {
                    text[0] = e.getMessage();
                    return 3;
                })
                .execute(args);
        return text[0];
    }
}
