package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;

/**
 * The first, second, … n-th request of every sort fails once, until none is left to fail: what was acknowledged stays, what was
 * refused is not there, the refusal says why, and the program goes on or says that it must be started again.
 */
@Tag("long")
class EveryFaultTest {
    private static final int FIRST = 20_000;

    @TempDir
    Path folder;

    static Stream<Arguments> faults() {
        return Stream.of(NthFaultDisk.Sort.values())
                .flatMap(sort -> Stream.of(NthFaultDisk.Fault.values()).map(fault -> Arguments.of(sort, fault)));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void founding_and_recording(NthFaultDisk.Sort sort, NthFaultDisk.Fault fault) throws IOException {
        untilNoneIsLeft(sort, fault, home -> {});
    }

    @ParameterizedTest
    @MethodSource("faults")
    void recording_across_a_checkpoint_and_into_a_new_segment(NthFaultDisk.Sort sort, NthFaultDisk.Fault fault)
            throws IOException {
        untilNoneIsLeft(sort, fault, home -> Recorded.closed(home, StationFolder.SEGMENT - 4));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void setting_a_torn_end_aside(NthFaultDisk.Sort sort, NthFaultDisk.Fault fault) throws IOException {
        untilNoneIsLeft(sort, fault, home -> {
            Recorded.closed(home, 3);
            append(Recorded.files(home).segment(0), "{\"at\":");
            append(Recorded.files(home).checkpoints(), "{\"frontier\":");
        });
    }

    private static void append(Path file, String text) {
        try {
            Files.writeString(file, text, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void untilNoneIsLeft(NthFaultDisk.Sort sort, NthFaultDisk.Fault fault, Consumer<Path> ready)
            throws IOException {
        Path start = Files.createDirectories(folder.resolve("start"));
        ready.accept(start);
        boolean fired = true;
        for (int n = 0; fired; n++) {
            Path home = folder.resolve("home-" + n);
            Recorded.copy(start, home);
            NthFaultDisk disk = new NthFaultDisk(sort, fault);
            disk.failAfter(n);
            List<UUID> kept = new ArrayList<>();
            record(home, disk, kept);
            fired = disk.fired();
            holds(home, kept);
        }
    }

    /** Records as long as the journal lets, and notes what it acknowledged. */
    private static void record(Path home, NthFaultDisk disk, List<UUID> kept) {
        try (JournalFolder journal = Recorded.open(home, disk)) {
            for (int turn = 0; turn < 4; turn++) {
                List<Draft> drafts = Recorded.notes(FIRST + 10 * turn, 3);
                boolean said = accepted(() -> journal.append(drafts));
                kept.addAll(said ? drafts.stream().map(Draft::id).toList() : List.of());
                accepted(journal::checkpoint);
            }
            disk.heal();
            boolean broken = journal.status().readOnly().isPresent();
            assertThat(accepted(() -> journal.append(Recorded.notes(FIRST + 100, 1))))
                    .isEqualTo(!broken);
            kept.addAll(broken ? List.of() : List.of(Recorded.note(FIRST + 100).id()));
            assertThat(ids(Recorded.entries(journal)).stream().filter(EveryFaultTest::own))
                    .containsExactlyElementsOf(kept);
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        } catch (Refusal e) {
            // the home could not be opened or closed with that fault
            assertThat(e.code()).isEqualTo(Say.FAILED);
        }
    }

    /** Tells whether it was done; else the refusal must be one of those that people are shown. */
    private static boolean accepted(Runnable act) {
        try {
            act.run();
            return true;
        } catch (Refusal e) {
            assertThat(e.code()).isEqualTo(Say.FAILED);
            assertThat(e.getMessage()).isNotBlank().doesNotContain("Exception");
            return false;
        }
    }

    private static void holds(Path home, List<UUID> kept) {
        try (JournalFolder journal = Recorded.open(home, new FaultyDisk().unforced())) {
            List<UUID> found = ids(Recorded.entries(journal));
            assertThat(found.stream().filter(kept::contains)).containsExactlyElementsOf(kept);
            assertThat(found).doesNotHaveDuplicates();
            assertThat(journal.append(Recorded.notes(30_000, 1))).hasSize(1);
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        }
    }

    /** Tells whether this test recorded it, and not what the home began with. */
    private static boolean own(UUID id) {
        return id.getMostSignificantBits() >= FIRST;
    }

    private static List<UUID> ids(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.kind().equals("note.written"))
                .map(Entry::id)
                .toList();
    }
}
