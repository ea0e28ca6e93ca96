package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.journal.Site.Machine;
import wickbench.proof.OpenKey;

/** What one station takes of another from a folder in which that one's files are not as that one left them. */
class FollowerTest {
    private static final StationId STOCK = new StationId("stock");

    @TempDir
    Path root;

    private Site site;
    private Machine bench;
    private Machine stock;
    private Path there;

    /** Stock has shown its beginning and left; bench has taken that. */
    @BeforeEach
    void meet() {
        site = new Site(root);
        bench = site.station("bench");
        stock = site.station("stock");
        stock.note(1);
        site.settle();
        stock.close();
        site.settle();
        there = site.share().resolve("stock");
    }

    @AfterEach
    void close() {
        site.close();
    }

    private List<String> said() {
        return bench.exchange().notices();
    }

    private void append(String file, String text) throws IOException {
        Files.writeString(there.resolve(file), text, StandardOpenOption.APPEND);
    }

    /** Makes the newest checkpoint another, as any change of the station's own would. */
    private void touch() throws IOException {
        append("checkpoint", "\n");
    }

    @Test
    void nobody_is_met_before_their_first_entry_is_there_whole() throws IOException {
        StationFolder folder = new ShareFolder(site.share()).of(STOCK);
        String first = Files.readAllLines(folder.segment(0)).get(0);
        String second = Files.readAllLines(folder.segment(0)).get(1);
        for (String text :
                List.of("", first, "{}\n", second + "\n", first.replace("station.founded", "station.f0unded") + "\n")) {
            Files.writeString(folder.segment(0), text);
            assertThat(Beginning.of(folder).founded()).as(text).isEmpty();
        }
        Files.writeString(folder.segment(0), first + "\n");
        assertThat(Beginning.of(folder).founded()).isPresent();
        assertThat(Beginning.of(new StationFolder(new StationId("other"), folder.folder()))
                        .founded())
                .isEmpty();
        Files.delete(folder.segment(0));
        assertThat(Beginning.of(folder).founded()).isEmpty();
    }

    @Test
    void a_station_with_a_simulated_clock_is_not_taken() throws IOException {
        Path home = root.resolve("dream");
        HomeFolder dream = new HomeFolder(home);
        dream.simulate(7, Instant.EPOCH);
        try (JournalFolder journal = Recorded.open(dream)) {
            journal.append(Recorded.notes(0, 1));
        }
        Recorded.copy(Recorded.files(home).folder(), site.share().resolve("station-1"));
        assertThat(said()).anyMatch(notice -> notice.contains("station-1") && notice.contains("simulated"));
        assertThat(bench.size("station-1")).isZero();
    }

    @Test
    void a_station_of_which_no_checkpoint_is_there_yet_waits() throws IOException {
        Path fresh = site.share().resolve("fresh");
        Files.createDirectory(fresh);
        Machine other = site.machine("other");
        other.journal().found(Site.founding("fresh"));
        Files.copy(other.folder().resolve("journal/fresh/entries-000000.jsonl"), fresh.resolve("entries-000000.jsonl"));
        assertThat(said()).isEmpty();
        assertThat(bench.exchange().waits()).hasSize(1);
        assertThat(bench.size("fresh")).isZero();
        other.journal().others().share(Optional.of(root.resolve("share")));
        assertThat(other.exchange().notices()).isEmpty();
        site.settleUntil(() -> bench.size("fresh") > 0);
    }

    @Test
    void half_a_checkpoint_waits_and_a_whole_line_that_is_none_is_named() throws IOException {
        append("checkpoints.jsonl", "{\"half\":");
        touch();
        assertThat(said()).isEmpty();
        append("checkpoints.jsonl", "\n");
        assertThat(said()).anyMatch(notice -> notice.contains("does not fit what that station signed"));
        assertThat(bench.entries("stock", "note.written")).hasSize(1);
    }

    @Test
    void a_checkpoint_that_the_station_did_not_sign_is_named() throws IOException {
        Seal last = last();
        Seal forged =
                Seal.sign(StationKey.fromSeed(new byte[OpenKey.BYTES]), STOCK, last.startingPoint(), last.offset());
        append("checkpoints.jsonl", forged.line() + "\n");
        touch();
        assertThat(said()).anyMatch(notice -> notice.contains("stock") && notice.contains("signed"));
    }

    private Seal last() throws IOException {
        List<String> lines = Files.readAllLines(there.resolve("checkpoints.jsonl"));
        return Seal.parse(lines.get(lines.size() - 1)).orElseThrow();
    }

    @Test
    void a_shorter_list_that_is_the_beginning_of_ours_is_on_its_way() throws IOException {
        stock.reopenClosed();
        stock.note(2);
        stock.exchange();
        bench.exchange();
        stock.journal().close();
        List<String> lines = Files.readAllLines(there.resolve("checkpoints.jsonl"));
        assertThat(lines).hasSizeGreaterThan(1);
        Files.writeString(there.resolve("checkpoints.jsonl"), lines.get(0) + "\n");
        touch();
        assertThat(said()).isEmpty();
        Files.delete(there.resolve("checkpoints.jsonl"));
        assertThat(said()).isEmpty();
    }

    @Test
    void a_list_that_nobody_signed_is_called_damaged() throws IOException {
        Files.writeString(
                there.resolve("checkpoints.jsonl"), "x".repeat(last().line().length()) + "\n");
        touch();
        assertThat(said()).anyMatch(notice -> notice.contains("does not fit what that station signed"));
        assertThat(bench.entries("stock", "note.written")).hasSize(1);
    }

    @Test
    void a_list_of_its_own_over_entries_that_do_not_fit_it_is_called_damaged() throws IOException {
        // somebody took away all checkpoints but the last, which the station did sign, and changed an entry
        Files.writeString(there.resolve("checkpoints.jsonl"), last().line() + "\n" + last().line() + "\n");
        Path entries = there.resolve("entries-000000.jsonl");
        Files.writeString(entries, Files.readString(entries).replace("rinse", "Rinse"));
        touch();
        assertThat(said()).anyMatch(notice -> notice.contains("does not fit what that station signed"));
    }

    @Test
    void a_history_that_somebody_without_the_key_signed_is_no_fork_but_damage() throws IOException {
        Forged.history(new ShareFolder(site.share()).of(STOCK));
        assertThat(said()).anyMatch(notice -> notice.contains("does not fit what that station signed"));
        assertThat(bench.entries("bench", "station.forked")).isEmpty();
        assertThat(bench.entries("stock", "note.written")).hasSize(1);
    }

    @Test
    void a_clone_whose_files_took_the_place_of_the_others_is_a_fork_and_kept_as_evidence() throws IOException {
        site.copyDisk(stock, "clone");
        stock.reopenClosed();
        stock.note(2);
        stock.exchange();
        bench.exchange();
        stock.journal().close();
        Files.delete(root.resolve("clone/settings.json"));
        Machine clone = site.machine("clone");
        clone.note(3);
        clone.journal().checkpoint();
        Recorded.remove(there);
        Recorded.copy(clone.folder().resolve("journal/stock"), there);
        new WriterMark(new java.util.UUID(1, 1), 1).write(new RealDisk(), there);
        Sharing sharing = bench.exchange();
        assertThat(sharing.notices()).anyMatch(notice -> notice.contains("Two machines record as stock"));
        bench.exchange();
        assertThat(bench.entries("bench", "station.forked")).hasSize(1);
        Path evidence = new Layout(bench.folder())
                .stations()
                .resolve(ShareFolder.branchName(STOCK, last().root().hex()));
        assertThat(evidence.resolve("entries-000000.jsonl")).content().contains("\"n\":3");
        assertThat(evidence.resolve("writer.json")).doesNotExist();
        assertThat(bench.entries("stock", "note.written")).hasSize(2);
    }

    @Test
    void a_branch_that_is_not_whole_or_not_signed_or_of_nobody_known_is_no_evidence() throws IOException {
        Path branch = site.share().resolve("stock.branch-0123456789ab");
        Recorded.copy(there, branch);
        Path entries = branch.resolve("entries-000000.jsonl");
        Files.writeString(entries, Files.readString(entries).replace("rinse", "Rinse"));
        Path unsigned = site.share().resolve("stock.branch-ba9876543210");
        Files.createDirectory(unsigned);
        Files.writeString(unsigned.resolve("checkpoints.jsonl"), "{}\n");
        Files.createDirectory(site.share().resolve("nobody.branch-0123456789ab"));
        assertThat(said()).isEmpty();
        assertThat(bench.entries("bench", "station.forked")).isEmpty();
    }

    @Test
    void a_mark_of_the_share_that_is_being_placed_is_no_stranger() throws IOException {
        Files.writeString(site.share().resolve("wickbench-share.json.new"), "");
        assertThat(said()).isEmpty();
    }

    @Test
    void a_station_whose_newest_checkpoint_does_not_stand_alone_is_read_from_its_list() throws IOException {
        stock.reopenClosed();
        stock.note(2);
        stock.close();
        Files.delete(there.resolve("checkpoint"));
        assertThat(said()).isEmpty();
        assertThat(bench.entries("stock", "note.written")).hasSize(2);
        assertThat(said()).isEmpty();
    }

    @Test
    void whatever_lies_in_a_stations_folder_before_it_is_whole_waits() throws IOException {
        Path fresh = site.share().resolve("fresh");
        Files.createDirectory(fresh);
        assertThat(bench.exchange().waits()).isEmpty();
        for (String file : List.of("checkpoints.jsonl", "writer.json", "entries-000000.jsonl")) {
            // as a sync program shows what it has not filled in yet
            Files.writeString(fresh.resolve(file), "\0\0\0\n");
            assertThat(bench.exchange().waits()).as(file).hasSize(1);
            assertThat(said()).as(file).isEmpty();
            Files.delete(fresh.resolve(file));
        }
        assertThat(bench.exchange().waits()).isEmpty();
    }

    @Test
    void a_checkpoint_that_is_not_filled_in_yet_or_names_another_station_waits() throws IOException {
        String newest = Files.readString(there.resolve("checkpoint"));
        Files.writeString(there.resolve("checkpoint"), newest.replace("invalid/stock", "invalid/other"));
        assertThat(bench.exchange().waits()).hasSize(1);
        append("checkpoints.jsonl", "\0\0\0\n");
        assertThat(bench.exchange().waits()).hasSize(1);
        assertThat(said()).isEmpty();
        Files.writeString(there.resolve("checkpoint"), newest);
        assertThat(bench.exchange().waits()).isEmpty();
    }
}
