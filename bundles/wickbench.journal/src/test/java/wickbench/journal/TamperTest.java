package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Checked;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Verification;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;
import wickbench.proof.OpenKey;
import wickbench.proof.TreeHash;
import wickbench.testing.Meets;

/** What somebody with a text editor and without the key may do to a journal, and how it is named. */
class TamperTest {
    private static final int NOTES = 11;

    @TempDir
    Path folder;

    private Path segment;
    private Path checkpoints;

    @BeforeEach
    void record() {
        Recorded.closed(folder, 4);
        try (JournalFolder journal = Recorded.open(folder)) {
            journal.append(Recorded.notes(4, NOTES - 4));
        }
        segment = Recorded.files(folder).segment(0);
        checkpoints = Recorded.files(folder).checkpoints();
    }

    @Test
    @Meets("21 CFR 11.10(a)")
    void a_changed_entry_is_named() throws IOException {
        // the link to the last but one is the last link, so there either may be the changed one
        for (int place = 1; place < NOTES - 1; place++) {
            List<String> lines = Files.readAllLines(segment);
            String line = lines.get(place);
            lines.set(place, line.replace("rinse", "rinsE"));
            write(segment, lines);
            assertThat(first().where()).isEqualTo("station-1:" + place);
            assertThat(verified().findings())
                    .extracting(Verification.Broken::code)
                    .contains("entry.changed");
            lines.set(place, line);
            write(segment, lines);
        }
        assertThat(verified().holds()).isTrue();
    }

    @Test
    @Meets("ALCOA+ complete")
    void a_missing_entry_is_named() throws IOException {
        List<String> lines = Files.readAllLines(segment);
        lines.remove(5);
        lines.remove(5);
        write(segment, lines);
        assertThat(first()).isEqualTo(new Verification.Broken("station-1:5", "entry.missing", "Entry 5-6 is missing."));
    }

    @Test
    @Meets("ALCOA+ consistent")
    void swapped_entries_are_named() throws IOException {
        List<String> lines = Files.readAllLines(segment);
        Collections.swap(lines, 6, 7);
        write(segment, lines);
        assertThat(verified().findings())
                .extracting(Verification.Broken::where)
                .startsWith("station-1:6")
                .hasSizeLessThan(5);
    }

    @Test
    void an_entry_put_in_twice_is_named() throws IOException {
        List<String> lines = Files.readAllLines(segment);
        lines.add(6, lines.get(4));
        write(segment, lines);
        assertThat(first().code()).isEqualTo("entry.misplaced");
        assertThat(first().where()).isEqualTo("station-1:6");
    }

    @Test
    void an_entry_of_another_station_is_named() throws IOException {
        List<String> lines = Files.readAllLines(segment);
        lines.set(6, lines.get(6).replace("station-1", "station-2"));
        write(segment, lines);
        assertThat(first().where()).isEqualTo("station-1:6");
    }

    @Test
    @Meets("21 CFR 11.10(e)")
    void a_chain_made_anew_without_the_key_contradicts_the_checkpoint_over_the_old_one() throws IOException {
        for (int place = 0; place <= NOTES; place++) {
            byte[] before = Files.readAllBytes(segment);
            rewriteFrom(place);
            Verification.Broken first = first();
            assertThat(first.code()).isEqualTo("checkpoint.root");
            assertThat(first.where()).isEqualTo("station-1:" + smallestAround(place));
            Files.write(segment, before);
        }
    }

    /**
     * Returns the least that the checkpoints can tell: those over 5 entries and over 12, whose full subtrees hold 4 and 1, and 8 and 4.
     *
     * <p>From the first subtree that differs to the end of the first checkpoint that does.
     */
    private static String smallestAround(int place) {
        if (place < 4) {
            return "0-4";
        }
        if (place == 4) {
            return "4";
        }
        return place < 8 ? "5-11" : "8-11";
    }

    /** Changes an entry and computes all links behind it anew. */
    private void rewriteFrom(int place) throws IOException {
        List<String> lines = new ArrayList<>();
        TreeHash hash = new TreeHash();
        Hash prev = Kept.NOTHING.leaf();
        for (String line : Files.readAllLines(segment)) {
            Entry e = read(line);
            Json.Obj body = e.ref().seq() == place && place > 0 ? e.body().with("text", "nothing seen") : e.body();
            // the founding entry must still name the key, so its moment is changed
            var at = place == 0 && e.ref().seq() == 0 ? e.at().plusMillis(1) : e.at();
            byte[] written = EntryLine.write(
                    new Entry(e.ref(), e.id(), prev, at, e.offset(), e.by(), e.kind(), e.v(), body, prev));
            prev = Hash.of(hash.leaf(written));
            lines.add(new String(written, StandardCharsets.UTF_8));
        }
        write(segment, lines);
    }

    private static Entry read(String line) {
        Checked<Entry> read =
                EntryLine.readStrictly("line", line.getBytes(StandardCharsets.UTF_8), Kept.NOTHING.leaf());
        return read.orRefuse();
    }

    @Test
    void a_chain_made_anew_is_found_at_opening_where_it_is_read() throws IOException {
        Files.write(checkpoints, Files.readAllLines(checkpoints).subList(0, 1));
        List<String> lines = Files.readAllLines(segment);
        lines.set(7, lines.get(7).replace("rinse", "rinsE"));
        write(segment, lines);
        refusedAsTampered();
    }

    @Test
    void a_journal_cut_below_its_checkpoint_is_tampered_with() throws IOException {
        write(segment, Files.readAllLines(segment).subList(0, 8));
        refusedAsTampered();
        assertThat(verified().findings())
                .filteredOn(broken -> broken.code().equals("checkpoint.beyond"))
                .extracting(Verification.Broken::where)
                .contains("checkpoints.jsonl:2");
        assertThat(verified().checkpoints()).isEqualTo(2);
    }

    @Test
    void an_older_checkpoint_signed_with_another_key_is_named_by_its_line() throws IOException {
        assertThat(verified().checkpoints()).isEqualTo(2);
        List<String> lines = Files.readAllLines(checkpoints);
        Seal first = Seal.parse(lines.get(0)).orElseThrow();
        StationKey other = StationKey.fromSeed(new byte[OpenKey.BYTES]);
        lines.set(
                0,
                Seal.sign(other, Recorded.STATION, first.startingPoint(), first.offset())
                        .line());
        write(checkpoints, lines);
        assertThat(verified().findings())
                .singleElement()
                .isEqualTo(new Verification.Broken("checkpoints.jsonl:1", "checkpoint.signature", first().text()));
        assertThat(verified().checkpoints()).isEqualTo(2);
        lines.set(0, "{}");
        write(checkpoints, lines);
        assertThat(first().where()).isEqualTo("checkpoints.jsonl:1");
        assertThat(first().code()).isEqualTo("checkpoint.unreadable");
    }

    @Test
    void a_checkpoint_taken_from_the_list_is_missed() throws IOException {
        Files.write(checkpoints, Files.readAllLines(checkpoints).subList(0, 1));
        refusedAsTampered();
        Files.delete(checkpoints);
        refusedAsTampered();
    }

    @Test
    void a_checkpoint_signed_with_another_key_is_named() throws IOException {
        StationKey other = StationKey.fromSeed(new byte[OpenKey.BYTES]);
        List<String> lines = Files.readAllLines(checkpoints);
        Seal last = Seal.parse(lines.get(1)).orElseThrow();
        Seal forged = Seal.sign(other, Recorded.STATION, last.startingPoint(), last.offset());
        lines.set(1, forged.line());
        write(checkpoints, lines);
        Files.writeString(Recorded.files(folder).note(), forged.note());
        refusedAsTampered();
        assertThat(verified().findings()).extracting(Verification.Broken::code).containsOnly("checkpoint.signature");
    }

    @Test
    void checkpoints_out_of_order_are_named() throws IOException {
        List<String> lines = Files.readAllLines(checkpoints);
        Collections.swap(lines, 0, 1);
        write(checkpoints, lines);
        assertThat(verified().findings()).extracting(Verification.Broken::code).contains("checkpoint.order");
    }

    @Test
    void a_checkpoint_that_says_another_place_is_named() throws IOException {
        List<String> lines = Files.readAllLines(checkpoints);
        Seal last = Seal.parse(lines.get(1)).orElseThrow();
        lines.set(1, new Seal(last.size(), last.root(), last.frontier(), last.offset() - 1, last.note()).line());
        write(checkpoints, lines);
        assertThat(first().code()).isEqualTo("checkpoint.place");
        refusedAsTampered();
    }

    @Test
    void a_swapped_key_is_named() throws IOException {
        Files.writeString(
                new Layout(folder).key(Recorded.STATION),
                StationKey.fromSeed(new byte[OpenKey.BYTES]).pem());
        refusedAsTampered();
        assertThat(first().code()).isEqualTo("key");
        Files.delete(new Layout(folder).key(Recorded.STATION));
        refusedAsTampered();
        assertThat(first().code()).isEqualTo("key");
    }

    @Test
    void a_first_entry_that_names_another_key_contradicts_every_checkpoint() throws IOException {
        List<String> lines = Files.readAllLines(segment);
        String mine = StationKey.parse(Files.readString(new Layout(folder).key(Recorded.STATION)))
                .orElseThrow()
                .open()
                .base64();
        OpenKey other = StationKey.fromSeed(new byte[OpenKey.BYTES]).open();
        String fingerprint = OpenKey.parse(mine).orElseThrow().fingerprint().hex();
        lines.set(
                0,
                lines.get(0)
                        .replace(mine, other.base64())
                        .replace(fingerprint, other.fingerprint().hex()));
        write(segment, lines);
        refusedAsTampered();
        assertThat(verified().findings())
                .extracting(Verification.Broken::code)
                .contains("key", "entry.changed", "checkpoint.signature");
    }

    @Test
    void a_second_station_in_the_home_is_named() {
        Recorded.copy(Recorded.files(folder).folder(), folder.resolve("journal/station-2"));
        refusedAsTampered();
    }

    @Test
    void an_entry_changed_under_a_running_program_is_never_handed_out_as_right() throws IOException {
        try (JournalFolder journal = Recorded.open(folder)) {
            byte[] bytes = Files.readAllBytes(segment);
            String text = new String(bytes, StandardCharsets.UTF_8);
            Entry fifth = journal.entry(new EntryRef(Recorded.STATION, 5)).orElseThrow();
            for (String touched : List.of(
                    text.replace("\"n\":4", "\"n\":9"),
                    text.replace("\"seq\":5", "\"seq\":6"),
                    text.replace("\"id\":\"" + fifth.id(), "\"id\":\"x" + fifth.id()),
                    text.substring(0, text.indexOf("\"n\":4")))) {
                Files.writeString(segment, touched);
                assertThatThrownBy(() -> journal.entry(fifth.ref()))
                        .isInstanceOfSatisfying(
                                Refusal.class,
                                refusal -> assertThat(refusal.code()).isEqualTo("journal.tampered"));
                assertThat(journal.verify(Progress.NONE).holds()).isFalse();
            }
            Files.write(segment, bytes);
            assertThat(journal.verify(Progress.NONE).holds()).isTrue();
        }
    }

    private void refusedAsTampered() {
        try (JournalFolder journal = Recorded.open(folder)) {
            for (Runnable act : List.<Runnable>of(
                    journal::status,
                    journal::founding,
                    journal::checkpoint,
                    () -> journal.append(Recorded.notes(0, 1)))) {
                assertThatThrownBy(act::run)
                        .isInstanceOfSatisfying(
                                Refusal.class,
                                refusal -> assertThat(refusal.code()).isEqualTo("journal.tampered"));
            }
            assertThat(journal.verify(Progress.NONE).holds()).isFalse();
        }
    }

    private Verification verified() {
        return Recorded.verified(folder);
    }

    private Verification.Broken first() {
        return verified().findings().get(0);
    }

    private static void write(Path file, List<String> lines) throws IOException {
        Files.writeString(file, String.join("\n", lines) + "\n");
    }
}
