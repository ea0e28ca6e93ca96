package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Seen;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.journal.Site.Machine;

/** Several machines, one shared folder. */
class StationsTest {
    @TempDir
    Path root;

    private Site site;

    @BeforeEach
    void found() {
        site = new Site(root);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void each_station_gets_the_others_bytes_and_hears_of_their_entries() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        stock.note(2);
        site.settle();
        assertThat(bench.journal().stations()).containsExactly(new StationId("bench"), new StationId("stock"));
        assertThat(stock.journal().stations()).containsExactly(new StationId("stock"), new StationId("bench"));
        assertThat(bench.entries("stock")).isEqualTo(stock.entries("stock").subList(0, (int) bench.size("stock")));
        assertThat(stock.heard())
                .anyMatch(entry -> entry.ref().station().value().equals("bench")
                        && entry.kind().equals("note.written"));
        assertThat(stock.journal().line(bench.entries("bench").get(1).ref()))
                .isEqualTo(bench.journal().line(bench.entries("bench").get(1).ref()));
    }

    @Test
    void a_checkpoint_of_each_station_is_at_hand() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        stock.note(1);
        site.settle();
        StationId other = new StationId("stock");
        Checkpoint theirs = bench.journal().checkpoint(other).orElseThrow();
        assertThat(theirs.station()).isEqualTo(other);
        assertThat(theirs.size()).isEqualTo(bench.size("stock"));
        assertThat(theirs.note()).startsWith("wickbench").contains("\n" + theirs.size() + "\n");
        Optional<Checkpoint> own = bench.journal().checkpoint(new StationId("bench"));
        assertThat(own).isEqualTo(bench.journal().checkpoint());
        assertThat(bench.journal().checkpoint(new StationId("nowhere"))).isEmpty();
    }

    @Test
    void what_others_have_is_still_there_without_the_share_and_after_a_restart() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        site.settle();
        site.cut();
        stock.reopen();
        assertThat(stock.entries("bench", "note.written")).hasSize(1);
        Sharing cut = stock.exchange();
        assertThat(cut.cutOff()).isPresent();
        stock.note(2);
        Instant since = cut.cutOff().orElseThrow();
        assertThat(stock.exchange().cutOff()).contains(since);
        site.mend();
        site.settleUntil(() -> bench.entries("stock", "note.written").size() == 1);
        assertThat(stock.exchange().cutOff()).isEmpty();
    }

    @Test
    void an_empty_folder_where_the_share_was_mounted_is_not_taken_for_it() throws IOException {
        Machine bench = site.station("bench");
        site.settle();
        Files.move(site.share(), root.resolve("gone"));
        Files.createDirectory(site.share());
        bench.note(1);
        assertThat(bench.exchange().cutOff()).isPresent();
        assertThat(site.share()).isEmptyDirectory();
    }

    @Test
    void a_key_is_pinned_in_the_own_journal_once() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.note(1);
        site.settle();
        bench.reopen();
        site.settle();
        assertThat(bench.entries("bench", "station.pinned")).hasSize(1);
        assertThat(bench.entries("bench", "station.pinned").get(0).body())
                .isEqualTo(Pin.of(Follower.founded(new Layout(stock.folder()).station(new StationId("stock")))
                                .orElseThrow())
                        .body());
    }

    @Test
    void a_changed_key_is_refused_and_named_even_when_the_copy_is_gone() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        stock.close();
        Recorded.remove(site.share().resolve("stock"));
        Path other = root.resolve("other-share");
        Files.createDirectory(other);
        Machine impostor = site.machine("impostor");
        impostor.journal().found(Site.founding("stock"));
        impostor.journal().others().share(Optional.of(other));
        impostor.note(1);
        impostor.exchange();
        impostor.close();
        Files.move(other.resolve("stock"), site.share().resolve("stock"));
        long before = bench.size("stock");
        assertThat(bench.exchange().notices()).anyMatch(said -> said.contains("comes with the key"));
        assertThat(bench.size("stock")).isEqualTo(before);
        bench.journal().close();
        Recorded.remove(
                new Layout(bench.folder()).station(new StationId("stock")).folder());
        Machine again = site.machine("bench");
        assertThat(again.exchange().notices()).anyMatch(said -> said.contains("comes with the key"));
        assertThat(again.size("stock")).isZero();
    }

    @Test
    void a_station_says_what_it_had_seen_before_it_records_and_only_then() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.note(1);
        site.settle();
        site.settle();
        long quiet = stock.size("stock");
        site.settle();
        assertThat(stock.size("stock")).isEqualTo(quiet);
        stock.note(2);
        List<Seen> seen = Seen.of(stock.entries("stock", "station.seen")
                .get(stock.entries("stock", "station.seen").size() - 1));
        assertThat(seen)
                .containsExactly(new Seen(
                        new StationId("bench"),
                        stock.size("bench"),
                        stock.entries("bench")
                                .get((int) stock.size("bench") - 1)
                                .leaf()));
        assertThat(stock.entries("stock").get((int) stock.size("stock") - 2).kind())
                .isEqualTo("station.seen");
    }

    @Test
    void a_part_of_what_is_signed_waits_quietly() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.note(1);
        bench.note(2);
        bench.exchange();
        Path entries = site.share().resolve("bench/entries-000000.jsonl");
        byte[] all = Files.readAllBytes(entries);
        long before = stock.size("bench");
        for (int cut = all.length - 1; cut > all.length - 300; cut -= 37) {
            Files.write(entries, java.util.Arrays.copyOf(all, cut));
            Sharing sharing = stock.exchange();
            assertThat(sharing.notices()).isEmpty();
            assertThat(stock.size("bench")).isEqualTo(before);
        }
        byte[] zeros = all.clone();
        java.util.Arrays.fill(zeros, all.length - 200, all.length, (byte) 0);
        Files.write(entries, zeros);
        assertThat(stock.exchange().notices()).isEmpty();
        assertThat(stock.size("bench")).isEqualTo(before);
        Files.write(entries, all);
        stock.exchange();
        assertThat(stock.size("bench")).isGreaterThan(before);
    }

    @Test
    void what_was_changed_in_the_share_is_not_taken_and_is_named() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        long before = stock.size("bench");
        bench.note(1);
        bench.exchange();
        Path entries = site.share().resolve("bench/entries-000000.jsonl");
        String text = Files.readString(entries);
        Files.writeString(entries, text.replace("rinse", "ranse"));
        assertThat(stock.exchange().notices()).anyMatch(said -> said.contains("does not fit what that station signed"));
        assertThat(stock.size("bench")).isEqualTo(before);
        Files.writeString(entries, text);
        assertThat(stock.exchange().notices()).isEmpty();
        assertThat(stock.size("bench")).isGreaterThan(before);
    }

    @Test
    void copies_that_a_sync_program_made_are_ignored_and_named() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        site.settle();
        Files.copy(
                site.share().resolve("bench/entries-000000.jsonl"),
                site.share().resolve("bench/entries-000000 (conflicted copy).jsonl"));
        Files.writeString(site.share().resolve("bench (1)"), "what?");
        assertThat(stock.exchange().notices())
                .anyMatch(said -> said.contains("entries-000000 (conflicted copy).jsonl"))
                .anyMatch(said -> said.contains("bench (1)"));
        bench.note(2);
        site.settle();
        assertThat(stock.entries("bench", "note.written")).hasSize(2);
    }

    @Test
    void a_cloned_machine_that_goes_on_is_found_the_second_is_refused_and_both_branches_are_kept() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.journal().close();
        site.copyDisk(bench, "clone");
        bench.reopenClosed();
        bench.note(1);
        bench.exchange();
        site.cut();
        Machine clone = site.machine("clone");
        clone.note(2);
        site.mend();
        assertThat(clone.exchange().notices()).anyMatch(said -> said.contains("the home was copied and both went on"));
        assertThatThrownBy(() -> clone.note(3)).isInstanceOf(Refusal.class).hasMessageContaining("copied");
        assertThat(clone.journal().status().readOnly()).isPresent();
        bench.note(4);
        site.settle();
        assertThat(stock.entries("bench", "note.written")).hasSize(2);
        assertThat(stock.entries("stock", "station.forked")).hasSize(1);
        assertThat(stock.exchange().notices()).anyMatch(said -> said.contains("Two machines record as bench"));
        assertThat(wickbench.testing.Schemas.published()
                        .errors(
                                "station.forked-1.schema.json",
                                stock.entries("stock", "station.forked")
                                        .get(0)
                                        .body()
                                        .canonical()))
                .isEmpty();
        String evidence = text(stock.entries("stock", "station.forked").get(0), "folder");
        assertThat(Files.readString(
                        new Layout(stock.folder()).stations().resolve(evidence).resolve("entries-000000.jsonl")))
                .contains("\"n\":2");
        assertThat(clone.entries("bench", "note.written")).hasSize(1);
    }

    private static String text(wickbench.api.journal.Entry entry, String member) {
        return ((wickbench.api.json.Json.Text) entry.body().get(member).orElseThrow()).value();
    }

    @Test
    void an_older_copy_of_a_home_put_back_records_nothing_and_says_why() {
        Machine bench = site.station("bench");
        site.settle();
        bench.journal().close();
        site.copyDisk(bench, "old");
        bench.reopenClosed();
        bench.note(1);
        bench.close();
        Machine old = site.machine("old");
        assertThat(old.exchange().notices()).anyMatch(said -> said.contains("holds more of bench than this home"));
        assertThatThrownBy(() -> old.note(2)).isInstanceOf(Refusal.class);
    }

    @Test
    void two_programs_that_write_under_one_name_at_the_same_time_are_told_apart() throws IOException {
        Machine bench = site.station("bench");
        site.settle();
        Path folder = site.share().resolve("bench");
        WriterMark foreign = new WriterMark(new java.util.UUID(1, 1), 1);
        foreign.write(new RealDisk(), folder);
        assertThat(bench.exchange().notices()).anyMatch(said -> said.contains("Another machine writes"));
        assertThatThrownBy(() -> bench.note(2)).isInstanceOf(Refusal.class);
    }

    @Test
    void a_run_that_died_leaves_its_mark_for_some_seconds_and_a_living_one_for_good() throws IOException {
        Path folder = root;
        RealDisk disk = new RealDisk();
        new WriterMark(new java.util.UUID(1, 1), 7).write(disk, folder);
        WriterClaim patient = new WriterClaim(disk, folder, home("h-1"), new java.util.UUID(2, 2));
        assertThat(patient.ask(0)).isEqualTo(WriterClaim.Answer.WAIT);
        assertThat(patient.ask(WriterClaim.DEAD.toNanos() - 1)).isEqualTo(WriterClaim.Answer.WAIT);
        assertThat(patient.ask(WriterClaim.DEAD.toNanos())).isEqualTo(WriterClaim.Answer.WRITE);
        WriterClaim second = new WriterClaim(disk, folder, home("h-2"), new java.util.UUID(3, 3));
        assertThat(second.ask(0)).isEqualTo(WriterClaim.Answer.WAIT);
        patient.ask(WriterClaim.DEAD.toNanos() + WriterClaim.BEAT.toNanos());
        assertThat(second.ask(1)).isEqualTo(WriterClaim.Answer.TAKEN);
        patient.release();
        assertThat(new WriterClaim(disk, folder, home("h-3"), new java.util.UUID(4, 4)).ask(0))
                .isEqualTo(WriterClaim.Answer.WRITE);
    }

    private Path home(String name) throws IOException {
        return Files.createDirectories(root.resolve(name));
    }

    @Test
    void the_mark_of_an_earlier_run_of_the_same_home_is_its_own() throws IOException {
        RealDisk disk = new RealDisk();
        Path home = home("h");
        assertThat(new WriterClaim(disk, root, home, new java.util.UUID(1, 1)).ask(0))
                .isEqualTo(WriterClaim.Answer.WRITE);
        assertThat(new WriterClaim(disk, root, home, new java.util.UUID(2, 2)).ask(0))
                .isEqualTo(WriterClaim.Answer.WRITE);
        assertThat(new WriterClaim(disk, root, home("other"), new java.util.UUID(3, 3)).ask(0))
                .isEqualTo(WriterClaim.Answer.WAIT);
    }

    @Test
    void a_new_station_takes_no_name_that_is_known() throws IOException {
        site.station("bench");
        site.settle();
        Machine second = site.machine("second");
        second.journal().others().share(Optional.of(site.share()));
        assertThatThrownBy(() -> second.journal().found(Site.founding("bench")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("station.taken"));
        second.journal().found(Site.founding("bench-2"));
        second.exchange();
        assertThat(second.size("bench")).isPositive();
    }

    @Test
    void a_station_that_was_founded_apart_under_a_known_name_is_refused() throws IOException {
        site.station("bench");
        site.settle();
        Machine other = site.machine("other");
        other.journal().found(Site.founding("bench"));
        other.journal().others().share(Optional.of(site.share()));
        assertThat(other.exchange().notices()).anyMatch(said -> said.contains("Another station in the shared folder"));
        assertThatThrownBy(() -> other.note(1)).isInstanceOf(Refusal.class);
    }

    @Test
    void a_clock_in_2099_and_set_back_hinders_nobody() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        stock.journal().close();
        stock.open(Instant.parse("2099-01-01T00:00:00Z"));
        stock.note(1);
        stock.journal().close();
        stock.open(Instant.parse("2026-03-01T00:00:00Z"));
        stock.note(2);
        site.settle();
        assertThat(bench.entries("stock", "note.written")).hasSize(2);
        assertThat(bench.entries("stock").stream()
                        .map(entry -> entry.ref().seq())
                        .toList())
                .isSorted();
    }

    @Test
    void a_folder_with_other_things_in_it_is_no_share() throws IOException {
        Machine bench = site.machine("bench");
        Files.writeString(root.resolve("share/letter.txt"), "hello", StandardCharsets.UTF_8, StandardOpenOption.CREATE);
        assertThatThrownBy(() -> bench.journal().others().share(Optional.of(site.share())))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("share.none"));
        assertThat(bench.journal().others().sharing().share()).isEmpty();
    }

    @Test
    void a_copy_that_was_changed_here_is_put_aside_and_read_again() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        site.settle();
        stock.journal().close();
        Path entries =
                new Layout(stock.folder()).station(new StationId("bench")).segment(0);
        String text = Files.readString(entries);
        Files.writeString(entries, text.substring(0, text.length() - 3) + "x}\n");
        stock.reopenClosed();
        assertThat(stock.journal().status().notices()).anyMatch(said -> said.contains("put aside"));
        stock.exchange();
        assertThat(Files.readString(entries)).isEqualTo(text);
    }

    @Test
    void a_station_cut_off_for_three_days_comes_back_with_all_that_both_have_recorded() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        site.cut();
        Instant day = Instant.parse("2026-03-02T06:00:00Z");
        for (int days = 0; days < 3; days++) {
            stock.journal().close();
            stock.open(day.plusSeconds(86_400L * days));
            stock.exchange();
            stock.note(days);
            bench.note(10 + days);
        }
        List<wickbench.api.journal.Entry> before = stock.entries("stock");
        site.mend();
        site.settleUntil(() -> bench.entries("stock", "note.written").size() == 3
                && stock.entries("bench", "note.written").size() == 3);
        assertThat(bench.entries("stock").subList(0, before.size())).isEqualTo(before);
        assertThat(stock.entries("bench")).isEqualTo(bench.entries("bench").subList(0, (int) stock.size("bench")));
    }
}
