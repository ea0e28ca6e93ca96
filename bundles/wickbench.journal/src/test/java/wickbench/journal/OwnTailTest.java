package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;
import wickbench.journal.Site.Machine;

/** A home made from a back-up takes back from the shared folder what its station had recorded after it. */
class OwnTailTest {
    @TempDir
    Path root;

    private Site site;
    private Machine bench;
    private Machine stock;
    private List<Entry> all;

    /** Backs a station up, lets it record more that the others see, and loses its machine. */
    @BeforeEach
    void lose() {
        site = new Site(root);
        bench = site.station("bench");
        stock = site.station("stock");
        bench.note(1);
        site.settle();
        HomeBackups backups = new HomeBackups(new HomeFolder(bench.folder()), () -> bench.journal());
        backups.backUp(root.resolve("safe"), Progress.NONE);
        bench.note(2);
        bench.journal().checkpoint();
        bench.note(3);
        bench.note(4);
        site.settle();
        all = bench.entries("bench");
        bench.close();
        HomeBackups anew = new HomeBackups(new HomeFolder(root.resolve("anew")), () -> {
            throw new AssertionError("restoring opens no journal");
        });
        anew.restore(root.resolve("safe"), root.resolve("anew"), Optional.empty(), Progress.NONE);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Path share(String file) {
        return site.share().resolve("bench").resolve(file);
    }

    @Test
    void all_is_back_before_anything_is_recorded_and_nothing_forks() {
        Machine anew = site.machine("anew");
        anew.note(5);
        assertThat(anew.entries("bench").subList(0, all.size())).isEqualTo(all);
        assertThat(anew.entries("bench").get(all.size()).kind()).isEqualTo("journal.restored");
        assertThat(anew.journal().status().notices())
                .anyMatch(notice -> notice.matches(
                        "[0-9]+ entries of bench that came after the back-up were taken back from the shared"
                                + " folder .*"));
        assertThat(anew.heard()).containsAll(all.subList(all.size() - 2, all.size()));
        site.settleUntil(() -> stock.entries("bench", "note.written").size() == 5);
        assertThat(stock.entries("bench").subList(0, all.size())).isEqualTo(all);
        assertThat(stock.entries("stock", "station.forked")).isEmpty();
        assertThat(anew.journal().verify(Progress.NONE).holds()).isTrue();
        anew.reopen();
        assertThat(anew.journal().verify(Progress.NONE).holds()).isTrue();
        assertThat(anew.journal().status().readOnly()).isEmpty();
    }

    @Test
    @Tag("long")
    void a_part_of_the_tail_is_waited_for_and_nothing_is_recorded_meanwhile() throws IOException {
        byte[] whole = Files.readAllBytes(share("entries-000000.jsonl"));
        String text = new String(whole, StandardCharsets.UTF_8);
        int last = text.lastIndexOf('\n', text.length() - 2) + 1;
        Files.writeString(share("entries-000000.jsonl"), text.substring(0, last));
        Machine anew = site.machine("anew");
        assertThatThrownBy(() -> anew.note(5))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("they are taken back first");
        assertThat(anew.journal().status().readOnly()).isPresent();
        assertThat(anew.exchange().notices()).anyMatch(notice -> notice.contains("they are taken back first"));
        anew.reopen();
        Files.write(share("entries-000000.jsonl"), whole);
        anew.note(5);
        assertThat(anew.entries("bench").subList(0, all.size())).isEqualTo(all);
    }

    @Test
    void lines_taken_back_before_a_crash_wait_for_their_checkpoint() throws IOException {
        // as a program leaves it that died while it took back what the first checkpoint covers: the last line torn
        String there = Files.readString(share("entries-000000.jsonl"));
        Path here = root.resolve("anew/journal/bench/entries-000000.jsonl");
        Files.writeString(here, there.substring(0, there.indexOf("\"n\":2")));
        Machine anew = site.machine("anew");
        anew.note(5);
        assertThat(anew.entries("bench").subList(0, all.size())).isEqualTo(all);
        assertThat(anew.journal().verify(Progress.NONE).holds()).isTrue();
        assertThat(anew.journal().status().readOnly()).isEmpty();
    }

    @Test
    @Tag("long")
    void what_is_changed_in_the_share_is_not_taken() throws IOException {
        Files.writeString(
                share("entries-000000.jsonl"),
                Files.readString(share("entries-000000.jsonl")).replace("\"n\":4", "\"n\":7"));
        Machine anew = site.machine("anew");
        assertThatThrownBy(() -> anew.note(5)).hasMessageContaining("they are taken back first");
        assertThat(all).startsWith(anew.entries("bench").toArray(Entry[]::new));
    }

    @Test
    @Tag("long")
    void while_the_old_machine_still_runs_nothing_is_recorded() throws Exception {
        new WriterMark(new UUID(7, 7), 1).write(new RealDisk(), site.share().resolve("bench"));
        Machine anew = site.machine("anew");
        anew.exchange();
        new WriterMark(new UUID(7, 7), 2).write(new RealDisk(), site.share().resolve("bench"));
        assertThatThrownBy(() -> anew.note(5)).hasMessageContaining("Another machine writes to the shared folder");
    }

    @Test
    void who_leaves_the_share_records_on_without_the_tail() {
        Machine anew = site.machine("anew");
        anew.journal().others().share(Optional.empty());
        anew.note(5);
        assertThat(anew.entries("bench", "journal.restored")).hasSize(1);
    }

    @Test
    void what_the_station_did_not_sign_is_not_taken() throws IOException {
        List<String> lines = Files.readAllLines(share("checkpoints.jsonl"));
        List<String> here = Files.readAllLines(root.resolve("anew/journal/bench/checkpoints.jsonl"));
        Files.writeString(
                share("checkpoints.jsonl"), String.join("\n", here) + "\n{}\n" + lines.get(lines.size() - 1) + "\n");
        Machine anew = site.machine("anew");
        assertThat(anew.exchange().notices()).anyMatch(notice -> notice.contains("they are taken back first"));
        assertThat(anew.size("bench")).isLessThan(all.size());
    }

    @Test
    void what_somebody_else_signed_is_not_taken() throws IOException {
        StationFolder there = new ShareFolder(site.share()).of(all.get(0).ref().station());
        List<String> here = Files.readAllLines(root.resolve("anew/journal/bench/checkpoints.jsonl"));
        List<String> lines = new ArrayList<>(here);
        List<String> shown = Files.readAllLines(there.checkpoints());
        for (String line : shown.subList(here.size(), shown.size())) {
            lines.add(Forged.seal(Seal.parse(line).orElseThrow(), there).line());
        }
        Files.writeString(there.checkpoints(), String.join("\n", lines) + "\n");
        Machine anew = site.machine("anew");
        assertThat(anew.exchange().notices()).anyMatch(notice -> notice.contains("they are taken back first"));
        assertThat(anew.entries("bench")).isEqualTo(all.subList(0, (int) anew.size("bench")));
        assertThat(anew.size("bench")).isLessThan(all.size());
    }

    @Test
    void a_checkpoint_that_was_listed_twice_is_taken_back_twice() throws IOException {
        List<String> lines = Files.readAllLines(share("checkpoints.jsonl"));
        Files.writeString(share("checkpoints.jsonl"), lines.get(lines.size() - 1) + "\n", StandardOpenOption.APPEND);
        Machine anew = site.machine("anew");
        anew.exchange();
        assertThat(anew.entries("bench")).isEqualTo(all);
        assertThat(anew.journal().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    void a_home_for_reading_takes_nothing_back() {
        try (JournalFolder reading = Recorded.open(root.resolve("anew"), new FaultyDisk().readOnly())) {
            long before = reading.size(all.get(0).ref().station());
            reading.others().exchange();
            assertThat(reading.size(all.get(0).ref().station())).isEqualTo(before);
        }
    }

    @Test
    void what_was_recorded_meanwhile_has_begun_a_history_of_its_own() throws IOException {
        Machine anew = site.machine("anew");
        anew.journal().others().share(Optional.empty());
        anew.note(5);
        long before = anew.size("bench");
        StationFolder there = new ShareFolder(site.share()).of(all.get(0).ref().station());
        assertThat(anew.journal().writing().takeBack(there)).isEmpty();
        assertThat(anew.size("bench")).isEqualTo(before);
    }
}
