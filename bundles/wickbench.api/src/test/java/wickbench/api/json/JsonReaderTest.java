package wickbench.api.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.Complaint;

/** Hostile JSON is refused in one line each, as I-JSON (RFC 7493) asks; nothing else happens. */
class JsonReaderTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{\"a\":1,\"a\":2}",
                "{\"a\":1,\"\\u0061\":2}",
                "1e400",
                "-1e400",
                "1e-400",
                "1e999999999999",
                "9007199254740993",
                "0.1234567890123456",
                "\"\\ud800\"",
                "\"\\udc00\\ud800\"",
                "{\"\\ud800\":1}",
                "01",
                "+1",
                ".5",
                "NaN",
                "Infinity",
                "'a'",
                "{a:1}",
                "[1,]",
                "[1] [2]",
                "[1]x",
                "{\"a\":",
                "\"\u0001\"",
                "\"\\x\"",
                "// no\n1",
                "\ufeff1"
            })
    void what_is_no_i_json_is_refused(String text) {
        assertThat(complaints(text)).hasSize(1).first().satisfies(complaint -> {
            assertThat(complaint.source()).isEqualTo("file");
            assertThat(complaint.text()).isNotBlank().doesNotContain("\n");
        });
    }

    @Test
    void minus_nothing_is_nothing() {
        assertThat(JsonReader.read("file", "-0").orRefuse().canonical()).isEqualTo("0");
        assertThat(JsonReader.read("file", "-0.0e5").orRefuse().canonical()).isEqualTo("0");
    }

    @Test
    void what_is_nested_too_deep_is_refused_and_overflows_nothing() {
        assertThat(complaints("[".repeat(100_000) + "]".repeat(100_000))).hasSize(1);
        assertThat(complaints("{\"a\":".repeat(100_000))).hasSize(1);
        int depth = JsonReader.DEPTH;
        assertThat(complaints("[".repeat(depth) + "]".repeat(depth))).isEmpty();
        assertThat(complaints("[".repeat(depth + 1) + "]".repeat(depth + 1))).hasSize(1);
    }

    @Test
    void a_number_of_many_digits_is_refused_before_it_is_computed() {
        assertThat(complaints("1" + "0".repeat(1_000_000))).hasSize(1);
        assertThat(complaints("0." + "1".repeat(1_000_000))).hasSize(1);
    }

    @Test
    void bytes_that_are_no_utf_8_are_refused() {
        assertThat(JsonReader.read("file", new byte[] {'"', (byte) 0xc3, '"'}).complaints())
                .hasSize(1);
        assertThat(JsonReader.read("file", new byte[] {'"', (byte) 0xed, (byte) 0xa0, (byte) 0x80, '"'})
                        .complaints())
                .hasSize(1);
        assertThat(JsonReader.read("file", "\"\u20ac\"".getBytes(StandardCharsets.UTF_8))
                        .orRefuse())
                .isEqualTo(new Json.Text("\u20ac"));
    }

    @Test
    void the_line_of_a_mistake_is_named() {
        assertThat(complaints("{\n\"a\": 1,\n\"a\": 2\n}"))
                .first()
                .satisfies(complaint -> assertThat(complaint.line()).hasValue(3));
    }

    @Test
    void what_must_be_an_object_is_one() {
        assertThat(JsonReader.readObject("file", "[]").complaints()).hasSize(1);
        assertThat(JsonReader.readObject("file", "{\"a\":null}").orRefuse().get("a"))
                .contains(Json.Null.NULL);
    }

    private static List<Complaint> complaints(String text) {
        return JsonReader.read("file", text).complaints();
    }
}
