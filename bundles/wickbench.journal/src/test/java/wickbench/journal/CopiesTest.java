package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.journal.Site.Machine;

/** Copies of other stations' journals as a program finds them that died, or that somebody meddled with. */
class CopiesTest {
    private static final StationId STOCK = new StationId("stock");

    @TempDir
    Path root;

    private Site site;
    private Machine bench;
    private StationFolder copy;
    private long size;

    @BeforeEach
    void share() {
        site = new Site(root);
        bench = site.station("bench");
        Machine stock = site.station("stock");
        stock.note(1);
        site.settle();
        stock.close();
        site.settle();
        size = bench.size("stock");
        bench.journal().close();
        copy = new Layout(bench.folder()).station(STOCK);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private List<String> opened() throws IOException {
        List<String> said = new ArrayList<>();
        try (Copies copies = Copies.open(new RealDisk(), new Layout(bench.folder()), said::add)) {
            said.add(copies.station(STOCK)
                    .map(station -> "stock " + station.kept().size())
                    .orElse("none"));
        } finally {
            // whatever became of the copy, it comes again from the shared folder
            bench.reopenClosed();
        }
        bench.exchange();
        assertThat(bench.size("stock")).isEqualTo(size);
        assertThat(bench.entries("stock", "note.written")).hasSize(1);
        return said;
    }

    @Test
    void a_copy_as_it_was_left_is_there() throws IOException {
        assertThat(opened()).containsExactly("stock " + size);
    }

    @Test
    void what_came_in_without_its_checkpoint_is_cut_off() throws IOException {
        byte[] entries = Files.readAllBytes(copy.segment(0));
        byte[] checkpoints = Files.readAllBytes(copy.checkpoints());
        Files.writeString(copy.segment(0), "{\"at\":\"half a li", StandardOpenOption.APPEND);
        Files.writeString(copy.segment(1), "a segment begun");
        Files.writeString(copy.checkpoints(), "{\"frontier\":[", StandardOpenOption.APPEND);
        assertThat(opened()).containsExactly("stock " + size);
        assertThat(copy.segment(1)).doesNotExist();
        assertThat(copy.segment(0)).hasBinaryContent(entries);
        assertThat(copy.checkpoints()).hasBinaryContent(checkpoints);
    }

    @Test
    void a_copy_without_any_checkpoint_begins_anew() throws IOException {
        Files.delete(copy.checkpoints());
        assertThat(opened()).containsExactly("none");
    }

    @Test
    void a_copy_whose_mark_cannot_be_read_begins_anew() throws IOException {
        Files.writeString(CopyMark.file(copy.folder()), "{");
        assertThat(opened()).containsExactly("none");
    }

    @Test
    void a_copy_of_another_key_is_put_aside() throws IOException {
        new CopyMark("ab".repeat(32), 0).write(new RealDisk(), copy.folder());
        assertThat(opened()).hasSize(2).first().asString().contains("stock.aside-1");
    }

    @Test
    void a_copy_whose_checkpoint_cannot_be_read_is_put_aside_beside_an_older_one() throws IOException {
        Files.createDirectory(copy.folder().resolveSibling("stock.aside-1"));
        Files.writeString(copy.checkpoints(), "{}\n", StandardOpenOption.APPEND);
        assertThat(opened()).hasSize(2).first().asString().contains("stock.aside-2");
    }

    @Test
    void a_copy_that_was_changed_is_opened_and_not_read() throws IOException {
        String text = Files.readString(copy.segment(0));
        Files.writeString(copy.segment(0), text.replace("rinse", "Rinse"));
        bench.reopenClosed();
        assertThat(bench.size("stock")).isEqualTo(size);
        assertThatThrownBy(() -> bench.entries("stock"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("contradicts its seal");
    }

    @Test
    void a_copy_whose_pin_was_changed_under_the_program_is_named_by_the_full_check() throws IOException {
        bench.reopenClosed();
        new CopyMark("ab".repeat(32), 0).write(new RealDisk(), copy.folder());
        assertThat(bench.journal().verify(Progress.NONE).findings())
                .extracting(Verification.Broken::code)
                .containsExactly("copy.key");
        Files.writeString(CopyMark.file(copy.folder()), "{");
        assertThat(bench.journal().verify(Progress.NONE).holds()).isFalse();
    }

    @Test
    void a_copy_exchanged_with_its_pin_contradicts_the_one_in_the_own_journal() throws IOException {
        Machine impostor = site.machine("impostor");
        impostor.journal().found(Site.founding("stock"));
        impostor.note(1);
        impostor.close();
        Recorded.remove(copy.folder());
        Recorded.copy(root.resolve("impostor/journal/stock"), copy.folder());
        new CopyMark(
                        Beginning.of(copy)
                                .founded()
                                .orElseThrow()
                                .key()
                                .fingerprint()
                                .hex(),
                        0)
                .write(new RealDisk(), copy.folder());
        bench.reopenClosed();
        assertThat(bench.journal().verify(Progress.NONE).findings())
                .extracting(Verification.Broken::code)
                .containsExactly("copy.key");
    }

    @Test
    void a_check_of_all_that_is_stopped_or_finds_something_asks_no_further() throws IOException {
        bench.reopenClosed();
        assertThat(bench.journal().verify((done, total) -> false).complete()).isFalse();
        String text = Files.readString(copy.segment(0));
        Files.writeString(copy.segment(0), text.replace("rinse", "Rinse"));
        assertThat(bench.journal().verify(Progress.NONE).findings())
                .extracting(Verification.Broken::code)
                .contains("checkpoint.root")
                .doesNotContain("copy.key");
    }

    @Test
    void no_station_is_founded_in_the_place_of_a_copy() throws IOException {
        Recorded.remove(
                new Layout(bench.folder()).station(new StationId("bench")).folder());
        Files.delete(bench.folder().resolve("settings.json"));
        bench.reopenClosed();
        assertThat(bench.journal().founding()).isEmpty();
        assertThatThrownBy(() -> bench.journal().found(Site.founding("stock")))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo("station.taken"));
        bench.journal().found(Site.founding("bench-2"));
        assertThat(bench.size("stock")).isEqualTo(size);
    }

    @Test
    void a_copy_from_which_everything_was_taken_away_while_the_disk_failed_begins_anew() throws IOException {
        Layout layout = new Layout(bench.folder());
        NthFaultDisk disk = new NthFaultDisk(NthFaultDisk.Sort.WRITE, NthFaultDisk.Fault.ERROR);
        try (Copies copies = Copies.open(disk, layout, said -> {})) {
            Copy known = copies.copy(STOCK).orElseThrow();
            disk.failAfter(0);
            StationFolder there = new ShareFolder(site.share()).of(STOCK);
            Station nothing = new Station(
                    there,
                    known.station().founded(),
                    Opened.nothing(known.station().founded()));
            Seal newest = known.station().newest().orElseThrow();
            assertThatThrownBy(() -> known.add(Stretch.read(there, nothing, newest), newest))
                    .isInstanceOf(IOException.class);
            Files.delete(copy.checkpoints());
            assertThat(copies.sound(STOCK)).isEmpty();
        }
        bench.reopenClosed();
    }
}
