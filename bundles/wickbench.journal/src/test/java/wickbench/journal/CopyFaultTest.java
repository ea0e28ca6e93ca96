package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;
import wickbench.journal.NthFaultDisk.Fault;
import wickbench.journal.NthFaultDisk.Sort;
import wickbench.journal.Site.Machine;

/** The disk fails once while another station's entries come in: they come in all the same, in the same run, and all are told. */
class CopyFaultTest {
    private static final StationId BENCH = new StationId("bench");

    @TempDir
    Path root;

    private Site site;
    private Machine bench;

    @BeforeEach
    void found() {
        site = new Site(root);
        bench = site.station("bench");
    }

    @AfterEach
    void close() {
        site.close();
    }

    @ParameterizedTest
    @EnumSource(
            value = Sort.class,
            names = {"WRITE", "FORCE", "RENAME", "REMOVE", "OPEN"})
    void what_was_refused_at_any_request_comes_with_the_next_exchange(Sort sort) throws IOException {
        NthFaultDisk disk = new NthFaultDisk(sort, Fault.ERROR);
        List<Entry> heard = new CopyOnWriteArrayList<>();
        Path home = root.resolve("reader");
        try (JournalFolder reader = JournalFolder.open(new HomeFolder(home), disk, heard::addAll)) {
            reader.found(Site.founding("reader"));
            reader.others().share(Optional.of(site.share()));
            reader.others().exchange();
            int note = 0;
            for (int good = 0; good < 6; good++) {
                bench.note(note++);
                bench.journal().checkpoint();
                bench.note(note++);
                bench.exchange();
                disk.failAfter(good);
                reader.others().exchange();
                disk.heal();
                settle(reader);
            }
            assertThat(heard.stream().filter(entry -> entry.ref().station().equals(BENCH)))
                    .containsExactlyElementsOf(all(reader));
        }
        assertThat(Recorded.verified(home).findings()).isEmpty();
        StationFolder copy = new Layout(home).station(BENCH);
        StationFolder ours = new Layout(bench.folder()).station(BENCH);
        assertThat(Files.readString(ours.checkpoints())).startsWith(Files.readString(copy.checkpoints()));
    }

    /** Exchanges until all that bench has is there; never, when one fault ended it. */
    private void settle(JournalFolder reader) {
        for (int pass = 0; pass < 20 && reader.size(BENCH) < bench.size("bench"); pass++) {
            bench.exchange();
            reader.others().exchange();
        }
        assertThat(reader.size(BENCH))
                .as(reader.others().sharing().notices().toString())
                .isEqualTo(bench.size("bench"));
    }

    private static List<Entry> all(JournalFolder reader) {
        List<Entry> entries = new ArrayList<>();
        reader.read(BENCH, 0, entries::add);
        return entries;
    }

    @Test
    void a_checkpoint_that_stands_twice_in_a_list_is_taken_twice() throws IOException {
        Machine stock = site.station("stock");
        bench.note(1);
        site.settle();
        bench.close();
        site.settle();
        Path list = site.share().resolve("bench/checkpoints.jsonl");
        List<String> lines = Files.readAllLines(list);
        // as a station lists it whose disk was full when the checkpoint was to stand alone too
        Files.writeString(list, lines.get(lines.size() - 1) + "\n", StandardOpenOption.APPEND);
        Files.writeString(site.share().resolve("bench/checkpoint"), "\n", StandardOpenOption.APPEND);
        long size = stock.size("bench");
        assertThat(stock.exchange().notices()).isEmpty();
        assertThat(stock.size("bench")).isEqualTo(size);
        assertThat(new Layout(stock.folder()).station(BENCH).checkpoints()).hasSameBinaryContentAs(list);
        assertThat(stock.journal().verify(Progress.NONE).holds()).isTrue();
    }
}
