package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.proof.Consistency;
import wickbench.proof.Digest;
import wickbench.proof.Inclusion;
import wickbench.proof.Note;
import wickbench.proof.OpenKey;
import wickbench.proof.TreeHash;

/** Proofs of a real home, checked by the verifier that knows nothing of it. */
class ProvingTest {
    private static final int NOTES = 700;

    @TempDir
    Path folder;

    private JournalFolder journal;

    @BeforeEach
    void record() {
        journal = Recorded.open(folder);
        journal.append(Recorded.notes(0, NOTES));
    }

    @AfterEach
    void close() {
        journal.close();
    }

    private EntryProof prove(long place, OptionalLong against) {
        return journal.proofs().prove(new EntryRef(Recorded.STATION, place), against);
    }

    /** Checks a proof as a stranger would: from the line, the path, the note and the key alone. */
    private static boolean holds(EntryProof proof) {
        Digest leaf = Digest.of(new TreeHash().leaf(proof.line().getBytes(StandardCharsets.UTF_8)));
        Note note = Note.parse(proof.checkpoint().note()).orElseThrow();
        Digest root = new Digest(proof.root().hex());
        return leaf.hex().equals(proof.leaf().hex())
                && new Inclusion(proof.entry().seq(), proof.size(), digests(proof.inclusion())).proves(leaf, root)
                && new Consistency(proof.size(), note.size(), digests(proof.consistency())).proves(root, note.root())
                && note.signedBy(OpenKey.parse(proof.publicKey()).orElseThrow());
    }

    private static List<Digest> digests(List<Hash> hashes) {
        return hashes.stream().map(hash -> new Digest(hash.hex())).toList();
    }

    @Test
    void every_entry_is_proved_under_the_newest_checkpoint() {
        for (long place = 0; place <= NOTES; place++) {
            EntryProof proof = prove(place, OptionalLong.empty());
            assertThat(holds(proof)).as("entry %d", place).isTrue();
            assertThat(proof.size()).isEqualTo(NOTES + 1);
            assertThat(proof.consistency()).isEmpty();
        }
    }

    @Test
    void an_entry_is_proved_under_an_older_checkpoint_that_the_newest_goes_on_from() {
        for (long against = 6; against <= NOTES + 1; against++) {
            assertThat(holds(prove(5, OptionalLong.of(against)))).isTrue();
        }
    }

    @Test
    void an_entry_recorded_a_moment_ago_is_proved_at_once() {
        prove(3, OptionalLong.empty());
        journal.append(List.of(Recorded.note(NOTES)));
        assertThat(holds(prove(NOTES + 1, OptionalLong.empty()))).isTrue();
    }

    @Test
    void an_altered_proof_is_none() {
        EntryProof proof = prove(5, OptionalLong.empty());
        EntryProof other = prove(6, OptionalLong.empty());
        assertThat(holds(new EntryProof(
                        proof.entry(),
                        other.line(),
                        other.leaf(),
                        proof.size(),
                        proof.root(),
                        proof.inclusion(),
                        proof.checkpoint(),
                        proof.consistency(),
                        proof.publicKey())))
                .isFalse();
    }

    @Test
    void what_is_not_there_or_came_later_is_refused_in_words() {
        assertThatThrownBy(() -> prove(NOTES + 1, OptionalLong.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessage("There is no station-1:" + (NOTES + 1) + " here.");
        assertThatThrownBy(() -> prove(9, OptionalLong.of(9)))
                .hasMessage(
                        "station-1:9 is not proved under a checkpoint over 9 entries: it came later, or there are only"
                                + " 701.");
        assertThatThrownBy(() -> prove(9, OptionalLong.of(NOTES + 2))).isInstanceOf(Refusal.class);
    }

    @Test
    void kept_hashes_that_were_damaged_are_made_again_from_the_entries() throws IOException {
        prove(5, OptionalLong.empty());
        journal.close();
        Path level = folder.resolve("tree/station-1/level-00");
        try (RandomAccessFile file = new RandomAccessFile(level.toFile(), "rw")) {
            file.seek(4 * TreeFiles.BYTES);
            file.write(1);
        }
        journal = Recorded.open(folder);
        assertThat(holds(prove(5, OptionalLong.empty()))).isTrue();
    }

    @Test
    void kept_hashes_that_do_not_fit_one_another_are_thrown_away() throws IOException {
        prove(5, OptionalLong.empty());
        journal.close();
        Files.write(folder.resolve("tree/station-1/level-03"), new byte[7]);
        journal = Recorded.open(folder);
        assertThat(holds(prove(5, OptionalLong.empty()))).isTrue();
        assertThat(folder.resolve("tree/station-1/level-03").toFile().length()).isEqualTo((NOTES + 1) / 8 * 32L);
    }

    @Test
    void entries_that_no_longer_lead_to_the_signed_root_are_tampering() throws IOException {
        journal.close();
        Path segment = Recorded.files(folder).segment(0);
        String text = Files.readString(segment);
        Files.writeString(segment, text.replaceFirst("\"n\":40,", "\"n\":41,"));
        journal = Recorded.open(folder);
        assertThatThrownBy(() -> prove(5, OptionalLong.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("contradicts its seal");
    }

    @Test
    void a_home_that_cannot_be_written_is_proved_too() throws IOException {
        journal.close();
        Files.delete(folder.resolve("lock"));
        Files.createDirectory(folder.resolve("lock"));
        journal = Recorded.open(folder);
        assertThat(holds(prove(5, OptionalLong.empty()))).isTrue();
        assertThat(folder.resolve("tree")).doesNotExist();
    }

    @Test
    void half_a_kept_hash_is_thrown_away() throws IOException {
        prove(5, OptionalLong.empty());
        journal.close();
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("tree/station-1/level-00").toFile(), "rw")) {
            file.setLength(file.length() - 1);
        }
        journal = Recorded.open(folder);
        assertThat(holds(prove(5, OptionalLong.empty()))).isTrue();
    }

    @Test
    void an_entry_that_could_not_be_signed_yet_is_not_proved() {
        journal.close();
        FaultyDisk disk = new FaultyDisk();
        journal = Recorded.open(folder, disk);
        journal.append(Recorded.notes(0, 1));
        disk.fullAfter(0);
        assertThatThrownBy(() -> prove(NOTES + 1, OptionalLong.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, no -> assertThat(no.code()).isEqualTo("proof.unsealed"));
        assertThat(holds(prove(5, OptionalLong.empty()))).isTrue();
        disk.withSpace();
    }

    @Test
    void entries_cut_off_under_the_program_are_missed_by_whoever_walks_over_them() throws IOException {
        journal.append(Recorded.notes(0, 2));
        Path segment = Recorded.files(folder).segment(0);
        byte[] all = Files.readAllBytes(segment);
        Files.write(segment, java.util.Arrays.copyOf(all, all.length - 10));
        assertThatThrownBy(() -> prove(5, OptionalLong.empty())).hasMessageContaining("contradicts its seal");
        Files.write(segment, all);
        assertThat(holds(prove(5, OptionalLong.empty()))).isTrue();
    }

    @Test
    void the_last_entry_is_held_against_what_the_program_recorded() throws IOException {
        Path segment = Recorded.files(folder).segment(0);
        String text = Files.readString(segment);
        int at = text.lastIndexOf("rinse");
        Files.writeString(segment, text.substring(0, at) + "rinsE" + text.substring(at + 5));
        EntryRef last = new EntryRef(Recorded.STATION, NOTES);
        assertThatThrownBy(() -> journal.entry(last)).hasMessageContaining("station-1:" + NOTES);
        Files.writeString(segment, text.substring(0, at));
        assertThatThrownBy(() -> journal.entry(last)).hasMessageContaining("contradicts its seal");
        Files.writeString(segment, text);
        assertThat(journal.entry(last)).isPresent();
        assertThat(journal.entry(new EntryRef(Recorded.STATION, NOTES + 1))).isEmpty();
    }

    @Test
    void whoever_reads_the_newest_entries_may_stop_among_them() {
        journal.append(Recorded.notes(0, 3));
        List<Long> read = new ArrayList<>();
        journal.read(Recorded.STATION, NOTES + 1, entry -> {
            read.add(entry.ref().seq());
            return read.size() < 2;
        });
        assertThat(read).containsExactly(NOTES + 1L, NOTES + 2L);
    }
}
