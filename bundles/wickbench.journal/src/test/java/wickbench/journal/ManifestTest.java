package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.check.Checked;
import wickbench.api.journal.Hash;

/** A back-up that does not say rightly what is in it is refused, with the member that is wrong. */
class ManifestTest {
    @TempDir
    Path folder;

    private Manifest manifest;

    @BeforeEach
    void make() {
        Recorded.closed(folder, 2);
        try (JournalFolder journal = Recorded.open(folder)) {
            manifest = new Manifest(
                    Instant.parse("2026-03-02T06:00:00Z"),
                    journal.checkpoint().orElseThrow(),
                    List.of(new Manifest.Item("stations/x", 3, Hash.ofContent(new byte[] {1, 2, 3}))));
        }
    }

    @Test
    void what_was_written_is_read() {
        assertThat(read(new String(manifest.bytes(), StandardCharsets.UTF_8)))
                .isInstanceOfSatisfying(
                        Checked.Good.class, good -> assertThat(good.value()).isEqualTo(manifest));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "'format':1 | 'format':2 | format",
                "'format':1 | 'format':'one' | format",
                "'made':'2026-03-02T06:00:00Z' | 'made':'yesterday' | made",
                "'made':'2026-03-02T06:00:00Z', | '' | checkpoint",
                "'station':'station-1' | 'station':'station-2' | checkpoint",
                "'station':'station-1' | 'station':'Station One' | station",
                "'bytes':3 | 'bytes':'three' | bytes",
                "'path':'stations/x' | 'path':7 | path",
            })
    void what_is_wrong_is_named(String right, String wrong, String member) {
        String text = new String(manifest.bytes(), StandardCharsets.UTF_8);
        String from = right.replace('\'', '"');
        assertThat(text).contains(from);
        String to = wrong.equals("''") ? "" : wrong.replace('\'', '"');
        assertThat(read(text.replace(from, to)))
                .isInstanceOfSatisfying(
                        Checked.Bad.class,
                        bad -> assertThat(bad.complaints().toString()).contains(member));
    }

    @Test
    void a_checkpoint_that_nobody_signed_is_none() {
        String note = manifest.checkpoint().note();
        String typed =
                manifest.checkpoint().station() + " " + manifest.checkpoint().size() + " "
                        + manifest.checkpoint().root().hex();
        Manifest unsigned = new Manifest(
                manifest.made(),
                new wickbench.api.journal.Checkpoint(
                        manifest.checkpoint().station(),
                        manifest.checkpoint().size(),
                        manifest.checkpoint().root(),
                        typed),
                List.of());
        assertThat(note).isNotEqualTo(typed);
        assertThat(read(new String(unsigned.bytes(), StandardCharsets.UTF_8))).isInstanceOf(Checked.Bad.class);
    }

    private static Checked<Manifest> read(String text) {
        return Manifest.read(Manifest.FILE, text.getBytes(StandardCharsets.UTF_8));
    }
}
