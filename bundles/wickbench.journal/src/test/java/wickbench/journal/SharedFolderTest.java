package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.journal.Site.Machine;
import wickbench.testing.Meets;

/** A shared folder in which not everything is whole, or not ours. */
class SharedFolderTest {
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
    void nothing_is_made_where_the_share_was_when_it_goes_in_the_middle_of_an_exchange() throws IOException {
        Machine bench = site.station("bench");
        site.settle();
        StationFolder own = new Layout(bench.folder()).station(new StationId("bench"));
        Publisher publisher = new Publisher(new RealDisk(), own, new ShareFolder(site.share()).of(own.station()));
        bench.note(1);
        Host.Shown shown = bench.journal().writing().seal();
        Files.move(site.share(), root.resolve("gone"));
        Files.createDirectory(site.share());
        assertThatThrownBy(() -> publisher.publish(shown)).isInstanceOf(IOException.class);
        FileExchange files =
                new FileExchange(new RealDisk(), bench.folder(), new ShareFolder(site.share()), own.station());
        assertThatThrownBy(() -> files.show("people")).isInstanceOf(IOException.class);
        assertThat(site.share()).isEmptyDirectory();
    }

    @Test
    void a_part_of_what_is_signed_waits_quietly() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        long before = stock.size("bench");
        // away while the folder is made so, for it looks there by itself too
        stock.journal().close();
        bench.note(1);
        bench.note(2);
        bench.exchange();
        Path entries = site.share().resolve("bench/entries-000000.jsonl");
        byte[] all = Files.readAllBytes(entries);
        Files.write(entries, Arrays.copyOf(all, all.length - 1));
        stock.reopenClosed();
        for (int cut = all.length - 1; cut > all.length - 300; cut -= 37) {
            Files.write(entries, Arrays.copyOf(all, cut));
            Sharing sharing = stock.exchange();
            assertThat(sharing.notices()).isEmpty();
            assertThat(stock.size("bench")).isEqualTo(before);
        }
        byte[] zeros = all.clone();
        Arrays.fill(zeros, all.length - 200, all.length, (byte) 0);
        Files.write(entries, zeros);
        assertThat(stock.exchange().notices()).isEmpty();
        assertThat(stock.size("bench")).isEqualTo(before);
        Files.write(entries, all);
        stock.exchange();
        assertThat(stock.size("bench")).isGreaterThan(before);
    }

    @Test
    @Meets({"EU GMP Annex 11 5", "ISO/IEC 17025 7.11.2 to 7.11.6"})
    void what_was_changed_in_the_share_is_not_taken_and_is_named() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        long before = stock.size("bench");
        stock.journal().close();
        bench.note(1);
        bench.exchange();
        Path entries = site.share().resolve("bench/entries-000000.jsonl");
        String text = Files.readString(entries);
        Files.writeString(entries, text.replace("rinse", "ranse"));
        stock.reopenClosed();
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
    void a_folder_that_is_not_there_is_no_share() {
        Machine bench = site.machine("bench");
        for (Path none : List.of(root.resolve("nowhere"), root.resolve("bench/lock"))) {
            assertThatThrownBy(() -> bench.journal().others().share(Optional.of(none)))
                    .isInstanceOfSatisfying(
                            Refusal.class, no -> assertThat(no.code()).isEqualTo("share.none"));
        }
    }

    @Test
    void a_folder_in_which_nothing_can_be_written_is_no_share_and_the_reason_is_told() {
        NthFaultDisk disk = new NthFaultDisk(NthFaultDisk.Sort.WRITE, NthFaultDisk.Fault.ERROR);
        try (JournalFolder journal = Recorded.open(root.resolve("bench"), disk)) {
            disk.failAfter(0);
            assertThatThrownBy(() -> journal.others().share(Optional.of(site.share())))
                    .isInstanceOfSatisfying(
                            Refusal.class, no -> assertThat(no.code()).isEqualTo("share.none"))
                    .hasMessageContaining("Input/output error");
        }
    }

    @Test
    void a_simulated_home_never_shares_whether_its_clock_runs_or_not() {
        HomeFolder dream = new HomeFolder(root.resolve("dream"));
        dream.simulate(7, Instant.EPOCH);
        try (JournalFolder journal = Recorded.open(dream)) {
            simulated(journal);
            journal.append(Recorded.notes(0, 1));
        }
        try (JournalFolder journal = Recorded.open(root.resolve("dream"))) {
            simulated(journal);
            assertThat(journal.others().exchange().share()).isEmpty();
        }
    }

    private void simulated(JournalFolder journal) {
        assertThatThrownBy(() -> journal.others().share(Optional.of(site.share())))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo("share.simulated"));
    }

    @Test
    void a_simulated_home_into_which_somebody_wrote_a_share_does_not_exchange() throws IOException {
        HomeFolder dream = new HomeFolder(root.resolve("dream"));
        dream.simulate(7, Instant.EPOCH);
        Machine bench = site.station("bench");
        Files.createDirectories(dream.folder());
        Files.copy(bench.folder().resolve("settings.json"), dream.folder().resolve("settings.json"));
        try (JournalFolder journal = Recorded.open(dream)) {
            journal.append(Recorded.notes(0, 1));
            assertThat(journal.others().exchange().stations()).isEmpty();
        }
        assertThat(site.share().resolve("station-1")).doesNotExist();
    }

    @Test
    void while_another_run_may_still_live_nothing_is_shown() throws IOException {
        Machine bench = site.machine("bench");
        bench.journal().found(Site.founding("bench"));
        Path own = site.share().resolve("bench");
        new ShareFolder(site.share()).make(new RealDisk());
        Files.createDirectory(own);
        new WriterMark(new UUID(1, 1), 1).write(new RealDisk(), own);
        bench.journal().others().share(Optional.of(site.share()));
        Sharing sharing = bench.exchange();
        assertThat(sharing.published()).isZero();
        assertThat(sharing.notices()).isEmpty();
        assertThat(own.resolve("entries-000000.jsonl")).doesNotExist();
        Files.delete(own.resolve("writer.json"));
        assertThat(bench.exchange().published()).isPositive();
    }
}
