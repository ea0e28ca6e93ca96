package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FactWordsTest {
    private final Locale before = Locale.getDefault();

    @AfterEach
    void giveBack() {
        Locale.setDefault(before);
    }

    /** Entries keep facts in English, so there they are said as they are. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "at least 75 s",
                "at most 12 h",
                "not before 2026-11-29",
                "started, read not stated",
                "3 beyond the count",
                "version 2 read",
                "control not-seen",
                "test seen, second reader not-seen",
                "×10 and ×100",
                "thermo-1 due 2026-11-01, thermo-2 due 2026-10-01",
                "pH 6.5 to 7.5 pH",
                "2026-11-29T10:00:00.000Z",
                "2026-11-01, term",
                "HZ-261103",
                ""
            })
    void are_in_english_what_was_kept(String fact) {
        Locale.setDefault(Locale.ENGLISH);
        assertThat(FactWords.said(fact)).isEqualTo(fact);
    }

    @Test
    void stand_under_themselves() {
        Locale.setDefault(Locale.ENGLISH);
        ResourceBundle words = ResourceBundle.getBundle("OSGI-INF.l10n.facts");
        assertThat(words.keySet()).hasSizeGreaterThan(40);
        words.keySet().stream()
                .filter(key -> key.startsWith("fact."))
                .forEach(key -> assertThat(FactWords.said(words.getString(key))).isEqualTo(words.getString(key)));
    }

    @Test
    void have_the_decimal_sign_of_the_language_and_dates_none() {
        Locale.setDefault(Locale.forLanguageTag("es"));
        assertThat(FactWords.said("pH 5.9")).isEqualTo("pH 5,9");
        assertThat(FactWords.said("at least 1.5 h")).endsWith("1,5 h");
        assertThat(FactWords.said("2026-11-29T10:00:00.000Z")).isEqualTo("2026-11-29T10:00:00.000Z");
        assertThat(FactWords.said("1.2.3")).isEqualTo("1.2.3");
    }
}
