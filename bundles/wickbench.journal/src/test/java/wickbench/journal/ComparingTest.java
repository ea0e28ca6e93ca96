package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Comparison.Result;
import wickbench.proof.Digest;
import wickbench.proof.Note;
import wickbench.proof.OpenKey;
import wickbench.proof.TreeHash;

/** A checkpoint kept elsewhere, held against the journal as it is now. */
class ComparingTest {
    @TempDir
    Path folder;

    private Path home;
    private Path copy;
    private Checkpoint early;
    private Checkpoint late;

    /** Records, copies the home, and records on. */
    @BeforeEach
    void record() {
        home = folder.resolve("home");
        copy = folder.resolve("copy");
        try (JournalFolder journal = Recorded.open(home)) {
            journal.append(Recorded.notes(0, 20));
            early = journal.checkpoint().orElseThrow();
        }
        Recorded.copy(home, copy);
        try (JournalFolder journal = Recorded.open(home)) {
            journal.append(Recorded.notes(20, 9));
            late = journal.checkpoint().orElseThrow();
        }
    }

    private static Comparison compare(Path home, String checkpoint) {
        try (JournalFolder journal = Recorded.open(home)) {
            return journal.proofs().compare(checkpoint);
        }
    }

    private static String typed(Checkpoint made) {
        return made.station() + " " + made.size() + " " + made.root();
    }

    @Test
    void a_checkpoint_of_before_is_consistent() {
        Comparison comparison = compare(home, early.note());
        assertThat(comparison.result()).isEqualTo(Result.CONSISTENT);
        assertThat(comparison.signed()).isTrue();
        assertThat(comparison.text())
                .isEqualTo("The journal of station-1 holds all 21 entries of the checkpoint unchanged, and 9 since.");
    }

    @Test
    void a_journal_put_back_is_older_and_what_is_missing_is_counted() {
        Comparison comparison = compare(copy, late.note());
        assertThat(comparison.result()).isEqualTo(Result.OLDER);
        assertThat(comparison.text()).contains("has 21 entries here", "covers 30", "newest 9 are missing");
    }

    @Test
    void a_copy_that_went_its_own_way_is_forked() {
        try (JournalFolder journal = Recorded.open(copy)) {
            journal.append(Recorded.notes(500, 20));
        }
        Comparison comparison = compare(copy, late.note());
        assertThat(comparison.result()).isEqualTo(Result.FORKED);
        assertThat(comparison.text()).startsWith("The first 30 entries of station-1 here are not those");
        assertThat(compare(copy, early.note()).holds()).isTrue();
    }

    @Test
    void a_checkpoint_of_another_key_is_named() {
        try (JournalFolder journal = Recorded.open(folder.resolve("other"))) {
            journal.append(Recorded.notes(0, 3));
            Comparison comparison =
                    compare(home, journal.checkpoint().orElseThrow().note());
            assertThat(comparison.result()).isEqualTo(Result.KEY_DIFFERS);
            assertThat(comparison.signed()).isFalse();
        }
    }

    @Test
    void a_checkpoint_with_a_size_altered_is_not_signed_any_more() {
        assertThat(compare(home, early.note().replace("\n21\n", "\n22\n")).result())
                .isEqualTo(Result.KEY_DIFFERS);
    }

    @Test
    void what_a_person_types_from_paper_is_compared_and_called_unsigned() {
        Comparison comparison = compare(home, typed(early));
        assertThat(comparison.result()).isEqualTo(Result.CONSISTENT);
        assertThat(comparison.signed()).isFalse();
        assertThat(comparison.text())
                .endsWith("What was typed carries no signature, so it says only as much as the paper it stands on.");
        String spaced = early.root().hex().toUpperCase(java.util.Locale.ROOT).replaceAll("(.{8})", "$1 ");
        assertThat(compare(home, " station-1, 21, " + spaced).holds()).isTrue();
        assertThat(compare(
                                home,
                                "station-1 21 "
                                        + Base64.getEncoder()
                                                .encodeToString(early.root().bytes()))
                        .holds())
                .isTrue();
        assertThat(compare(home, "station-1 20 " + early.root()).result()).isEqualTo(Result.FORKED);
    }

    @Test
    void the_empty_beginning_is_part_of_every_journal() {
        assertThat(compare(home, "station-1 0 " + Kept.NOTHING.leaf()).holds()).isTrue();
    }

    @Test
    void a_text_that_went_through_a_mail_is_read() {
        assertThat(compare(home, "\r\n" + early.note().replace("\n", "\r\n") + "\r\n")
                        .holds())
                .isTrue();
    }

    @Test
    void a_station_that_is_not_here_is_named() {
        Comparison comparison = compare(home, "stockroom 21 " + early.root());
        assertThat(comparison.result()).isEqualTo(Result.UNKNOWN_STATION);
        assertThat(comparison.text()).isEqualTo("No journal of stockroom is here.");
        assertThat(compare(folder.resolve("new"), early.note()).result()).isEqualTo(Result.UNKNOWN_STATION);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "station-1",
                "station-1 21",
                "station-1 21 00",
                "Station 21 0000000000000000000000000000000000000000000000000000000000000000",
                "station-1 -1 0000000000000000000000000000000000000000000000000000000000000000",
                "elsewhere.example/log\n"
                        + "1\n"
                        + "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=\n\n"
                        + "\u2014 elsewhere.example/log AAAA\n"
            })
    void what_is_no_checkpoint_is_told(String text) {
        assertThat(compare(home, text).result()).isEqualTo(Result.UNREADABLE);
    }

    @Test
    void the_codes_are_fixed() {
        assertThat(List.of(Result.values()).stream().map(Result::code))
                .containsExactly("consistent", "older", "forked", "key-differs", "unknown-station", "unreadable");
    }

    @Test
    void what_a_person_types_of_a_longer_journal_is_older_and_called_unsigned() {
        Comparison comparison = compare(copy, typed(late));
        assertThat(comparison.result()).isEqualTo(Result.OLDER);
        assertThat(comparison.text()).contains("the newest 9 are missing").endsWith("the paper it stands on.");
    }

    @Test
    void a_checkpoint_of_another_program_is_none_of_ours() {
        StationKey key = StationKey.fromSeed(new byte[OpenKey.BYTES]);
        Note note = Note.sign("elsewhere.example/log", 1, Digest.of(new TreeHash().empty()), key.open(), key::sign);
        assertThat(compare(home, note.whole()).result()).isEqualTo(Result.UNREADABLE);
        Note unnamed = Note.sign("wickbench.invalid/No Name", 1, note.root(), key.open(), key::sign);
        assertThat(compare(home, unnamed.whole()).result()).isEqualTo(Result.UNREADABLE);
    }
}
