package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.journal.Sharing;
import wickbench.journal.Site.Machine;

/** What lies in the shared folder was changed, or is not whole, before or after a station is first seen: nothing is passed over in silence. */
class FirstContactTest {
    @TempDir
    Path root;

    private Site site;
    private Machine bench;
    private Path there;

    @BeforeEach
    void found() {
        site = new Site(root);
        bench = site.station("bench");
        bench.note(1);
        bench.note(2);
        bench.exchange();
        // away from here on, for a station that runs mends its part of the folder
        bench.close();
        there = site.share().resolve("bench");
    }

    @AfterEach
    void close() {
        site.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"zone\":\"Z\"=>\"zone\":\"UTC\"",
                "\"kind\":\"station.founded\"=>\"kind\":\"station.fuonded\"",
                "\"key_fingerprint\":\"=>\"key_fingerprint\":\"0",
                "\"format\":1=>\"format\":2",
                "\"station\":\"bench\"=>\"station\":\"bunch\"",
                "{\"=>{ \"",
                "\"public_key\"=>\"public_kez\""
            })
    void a_first_entry_that_was_rewritten_before_first_contact_is_named_and_nothing_is_taken(String change)
            throws IOException {
        String[] parts = change.split("=>");
        Path entries = there.resolve("entries-000000.jsonl");
        String whole = Files.readString(entries);
        int end = whole.indexOf('\n');
        String first = whole.substring(0, end).replace(parts[0], parts[1]);
        assertThat(first).isNotEqualTo(whole.substring(0, end));
        Files.writeString(entries, first + whole.substring(end));
        Machine quality = site.station("quality");
        Sharing sharing = quality.exchange();
        assertThat(sharing.notices()).anyMatch(said -> said.contains("holds of bench does not fit"));
        assertThat(quality.size("bench")).isZero();
        assertThat(quality.entries("quality", Pin.KIND)).isEmpty();

        Files.writeString(entries, whole);
        assertThat(quality.exchange().notices()).isEmpty();
        assertThat(quality.entries("bench", "note.written")).hasSize(2);
    }

    @Test
    void a_first_entry_that_is_rewritten_after_first_contact_is_named_once_something_new_is_there() throws IOException {
        Machine quality = site.station("quality");
        quality.exchange();
        long before = quality.size("bench");
        // it looks there by itself, too, and would take in what is whole for a moment
        quality.close();
        more();
        change("entries-000000.jsonl", bytes -> {
            bytes[0] = '[';
            return bytes;
        });
        quality = site.machine("quality");
        Sharing sharing = quality.exchange();
        assertThat(sharing.stations().get(0).trouble()).isPresent();
        assertThat(quality.size("bench")).isEqualTo(before);
    }

    @Test
    void a_list_of_checkpoints_that_was_changed_is_named() throws IOException {
        change("checkpoints.jsonl", bytes -> {
            bytes[2] = 'S';
            return bytes;
        });
        assertThat(site.station("quality").exchange().notices())
                .anyMatch(said -> said.contains("holds of bench does not fit"));
    }

    @Test
    void whoever_meets_a_station_rewritten_whole_with_a_key_of_its_own_refuses_the_true_one_later() throws IOException {
        // nothing tells a stranger from the station before it was seen once; afterwards both ends are told
        Path kept = root.resolve("kept");
        Files.move(there, kept);
        Path apart = Files.createDirectory(root.resolve("apart"));
        Machine stranger = site.machine("stranger");
        stranger.journal().found(Site.founding("bench"));
        stranger.journal().others().share(Optional.of(apart));
        stranger.note(7);
        stranger.exchange();
        stranger.close();
        Files.move(apart.resolve("bench"), there);
        Machine quality = site.station("quality");
        assertThat(quality.exchange().notices()).isEmpty();
        String shown = quality.exchange().stations().get(0).keyFingerprint().hex();

        Machine real = site.machine("bench");
        assertThat(real.exchange().notices()).anyMatch(said -> said.contains("Another station in the shared folder"));
        assertThat(real.journal().status().readOnly()).isPresent();
        assertThat(shown)
                .isNotEqualTo(real.journal()
                        .writing()
                        .station()
                        .orElseThrow()
                        .founded()
                        .key()
                        .fingerprint()
                        .hex());
        real.close();
        Recorded.remove(there);
        Files.move(kept, there);
        assertThat(quality.exchange().notices()).anyMatch(said -> said.contains("comes with the key"));
    }

    @Test
    void what_is_not_whole_is_said_to_be_missing_until_it_is() throws IOException {
        Machine quality = site.machine("quality");
        quality.journal().found(Site.founding("quality"));
        Path aside = Files.createDirectory(root.resolve("aside"));
        for (String file : new String[] {"checkpoint", "checkpoints.jsonl", "entries-000000.jsonl"}) {
            Files.move(there.resolve(file), aside.resolve(file));
        }
        quality.journal().others().share(Optional.of(site.share()));
        assertThat(quality.exchange().waits()).as("nothing of it is there yet").isEmpty();
        Files.write(there.resolve("entries-000000.jsonl"), new byte[400]);
        waits(quality, "bench");
        Files.write(there.resolve("entries-000000.jsonl"), part(aside.resolve("entries-000000.jsonl"), 60));
        waits(quality, "bench");
        Files.copy(aside.resolve("checkpoints.jsonl"), there.resolve("checkpoints.jsonl"));
        waits(quality, "bench");
        Files.copy(aside.resolve("checkpoint"), there.resolve("checkpoint"));
        waits(quality, "bench");
        Files.delete(there.resolve("entries-000000.jsonl"));
        Files.copy(aside.resolve("entries-000000.jsonl"), there.resolve("entries-000000.jsonl"));
        assertThat(quality.exchange().waits()).isEmpty();
        assertThat(quality.entries("bench", "note.written")).hasSize(2);
    }

    @Test
    void newer_entries_that_are_not_whole_are_said_to_be_missing_and_an_older_folder_is_not() throws IOException {
        Machine quality = site.station("quality");
        site.settle();
        Path older = root.resolve("older");
        Recorded.copy(there, older);
        quality.close();
        more();
        byte[] whole = Files.readAllBytes(there.resolve("checkpoints.jsonl"));
        Files.write(there.resolve("checkpoints.jsonl"), part(there.resolve("checkpoints.jsonl"), whole.length - 5));
        quality = site.machine("quality");
        waits(quality, "bench");
        Files.write(there.resolve("checkpoints.jsonl"), whole);
        assertThat(quality.exchange().waits()).isEmpty();
        Recorded.remove(there);
        Recorded.copy(older, there);
        assertThat(quality.exchange().waits()).isEmpty();
        assertThat(quality.exchange().notices()).isEmpty();
    }

    @Test
    void a_folder_of_nobody_is_no_station() throws IOException {
        Files.createDirectory(site.share().resolve("letters"));
        Machine quality = site.station("quality");
        assertThat(quality.exchange().waits()).isEmpty();
    }

    /** The bench records one more, and shows it. */
    private void more() {
        Machine again = site.machine("bench");
        again.note(3);
        again.exchange();
        again.close();
    }

    private static void waits(Machine machine, String station) {
        Sharing sharing = machine.exchange();
        assertThat(sharing.waits()).singleElement().matches(said -> said.contains("all that " + station + " signed"));
        assertThat(sharing.notices()).isEmpty();
    }

    private static byte[] part(Path file, int length) throws IOException {
        return Arrays.copyOf(Files.readAllBytes(file), length);
    }

    private void change(String file, UnaryOperator<byte[]> how) throws IOException {
        Path path = there.resolve(file);
        Files.write(path, how.apply(Files.readAllBytes(path)));
    }
}
