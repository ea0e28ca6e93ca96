package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.person.PersonId;
import wickbench.testing.Meets;

class EntryLineTest {
    private static final Entry ENTRY = new Entry(
            new EntryRef(Recorded.STATION, 41),
            UUID.fromString("6f1c2b1e-1111-4222-8333-444455556666"),
            Kept.NOTHING.leaf(),
            Instant.parse("2026-03-31T08:05:00Z"),
            ZoneOffset.ofHours(2),
            new PersonId("rivera"),
            "note.\"written\"",
            3,
            Json.object().with("n", 1).with("\u20ac", "\n"),
            Kept.NOTHING.leaf());

    @Test
    @Meets("ALCOA+ legible")
    void a_line_is_the_envelope_in_canonical_form() {
        assertThat(text(ENTRY))
                .isEqualTo(
                        "{\"at\":\"2026-03-31T08:05:00.000Z\",\"body\":{\"n\":1,\"\u20ac\":\"\\n\"},\"by\":\"rivera\","
                                + "\"id\":\"6f1c2b1e-1111-4222-8333-444455556666\",\"kind\":\"note.\\\"written\\\"\","
                                + "\"offset\":\"+02:00\",\"prev\":\"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\","
                                + "\"seq\":41,\"station\":\"station-1\",\"v\":3}");
        Json read = JsonReader.read("line", text(ENTRY)).orRefuse();
        assertThat(read.canonical()).isEqualTo(text(ENTRY));
    }

    @Test
    void a_line_is_read_back() {
        assertThat(EntryLine.readStrictly("line", EntryLine.write(ENTRY), ENTRY.leaf())
                        .orRefuse())
                .isEqualTo(ENTRY);
    }

    @ParameterizedTest
    @CsvSource({
        "08:05:00.000Z, 08:05:00Z",
        "08:05:00.000Z, 08:05:00.0000Z",
        "08:05:00.000Z, 08:05",
        "+02:00, +02",
        "+02:00, Z",
        "+02:00, east",
        "'\"by\":\"rivera\"', '\"by\":\"Rivera\"'",
        "'\"by\":\"rivera\",', ''",
        "4222, 4222-4222",
        "e3b0, E3B0",
        "'\"seq\":41', '\"seq\":-41'",
        "'\"seq\":41', '\"seq\":41.5'",
        "'\"seq\":41', '\"seq\": 41'",
        "'\"v\":3', '\"v\":3,\"w\":3'",
        "'\"v\":3', '\"v\":99999999999'",
        "'{\"n\":1,', '{\"n\":1.0,'",
        "station-1, Station",
        "'{\"at\"', '[{\"at\"'"
    })
    void a_line_that_was_touched_is_refused(String found, String instead) {
        String touched = text(ENTRY).replace(found, instead);
        assertThat(touched).isNotEqualTo(text(ENTRY));
        assertThat(strictly(touched)).isInstanceOf(Checked.Bad.class);
    }

    @Test
    void what_is_no_object_is_refused() {
        assertThat(strictly("[1]")).isInstanceOf(Checked.Bad.class);
        assertThat(strictly(text(ENTRY).replaceAll("\"body\":\\{[^}]*\\}", "\"body\":[]")))
                .isInstanceOf(Checked.Bad.class);
    }

    @Test
    void the_form_of_every_line_end_fits_the_lines_written() {
        TailForm form = new TailForm(Recorded.STATION);
        byte[] line = EntryLine.write(ENTRY);
        byte[] prev = ENTRY.prev().bytes();
        assertThat(form.fits(line, 0, line.length, prev, 41)).isTrue();
        assertThat(form.fits(line, 0, line.length, prev, 42)).isFalse();
        assertThat(form.fits(line, 0, line.length, new byte[32], 41)).isFalse();
        assertThat(form.fits(line, 0, line.length - 1, prev, 41)).isFalse();
        assertThat(form.fits(line, line.length - 2, 2, prev, 41)).isFalse();
        assertThat(form.fits(line, line.length - 1, 1, prev, 41)).isFalse();
        assertThat(form.fits("{}".getBytes(StandardCharsets.UTF_8), 0, 2, prev, 41))
                .isFalse();
    }

    private static String text(Entry entry) {
        return new String(EntryLine.write(entry), StandardCharsets.UTF_8);
    }

    private static Checked<Entry> strictly(String line) {
        return EntryLine.readStrictly("line", line.getBytes(StandardCharsets.UTF_8), ENTRY.leaf());
    }
}
