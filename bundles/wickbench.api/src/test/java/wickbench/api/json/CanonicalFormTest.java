package wickbench.api.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Against the samples of RFC 8785 §3.2. */
class CanonicalFormTest {

    /**
     * §3.2.2, but for its first number: it has 17 digits, and numbers here have at most 15. {@link EcmaNumberTest} writes it
     * as published.
     */
    @Test
    void the_sample_is_written_as_published() {
        String sample = "{ \"numbers\": [333333333.333333, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],\n"
                + " \"string\": \"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\",\n"
                + " \"literals\": [null, true, false] }";
        assertThat(canonical(sample))
                .isEqualTo("{\"literals\":[null,true,false],\"numbers\":[333333333.333333,1e+30,4.5,0.002,1e-27],"
                        + "\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    /** §3.2.3: names in order of their UTF-16 units. */
    @Test
    void names_stand_in_the_published_order() {
        String sample =
                "{\"\\u20ac\":\"Euro Sign\",\"\\r\":\"Carriage Return\",\"\\ufb33\":\"Hebrew Letter Dalet With Dagesh\","
                        + "\"1\":\"One\",\"\\ud83d\\ude00\":\"Emoji: Grinning Face\",\"\\u0080\":\"Control\","
                        + "\"\\u00f6\":\"Latin Small Letter O With Diaeresis\"}";
        assertThat(canonical(sample))
                .isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    @Test
    void nothing_in_it_is_written_as_nothing() {
        assertThat(canonical("[ ]")).isEqualTo("[]");
        assertThat(canonical("{ }")).isEqualTo("{}");
        assertThat(canonical("\"\\b\\f\\t\\u0001\"")).isEqualTo("\"\\b\\f\\t\\u0001\"");
    }

    /** RFC 8785 §3.1: text is kept as it is, without Unicode normalisation. */
    @Test
    void an_accent_of_its_own_stays_one() {
        assertThat(canonical("\"A\\u030a\"")).isEqualTo("\"A\u030a\"").isNotEqualTo(canonical("\"\\u00c5\""));
    }

    private static String canonical(String text) {
        return JsonReader.read("sample", text).orRefuse().canonical();
    }
}
