package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.words.KeptLanguage;
import wickbench.api.words.Language;
import wickbench.api.words.Words;

/** Two languages are installed here, English and Spanish. */
class SpokenLanguageTest {
    private final Locale before = Locale.getDefault();

    @TempDir
    Path home;

    @AfterEach
    void giveBack() {
        Locale.setDefault(before);
    }

    @Test
    void is_that_of_the_machine_with_its_country() {
        assertThat(spoken("es-MX", Optional.empty())).isEqualTo("es-MX");
        assertThat(spoken("en-GB", Optional.empty())).isEqualTo("en-GB");
    }

    @Test
    void is_english_where_that_of_the_machine_is_not_installed() {
        assertThat(spoken("fr-FR", Optional.empty())).isEqualTo("en");
    }

    @Test
    void is_the_one_chosen_on_the_desk_before_that_of_the_machine() {
        new KeptLanguage(home).write(Language.find("es"));
        assertThat(spoken("en-GB", Optional.empty())).isEqualTo("es");
        new KeptLanguage(home).write(Optional.of(Language.ENGLISH));
        assertThat(spoken("es-ES", Optional.empty())).isEqualTo("en");
    }

    @Test
    void is_the_one_asked_for_before_any_other() {
        new KeptLanguage(home).write(Language.find("es"));
        assertThat(spoken("es-ES", Optional.of("en"))).isEqualTo("en");
    }

    @Test
    void is_refused_when_it_is_not_installed_and_those_that_are_get_named() {
        for (String odd : new String[] {"fr", "es-MX", "", "ES"}) {
            assertThatThrownBy(() -> spoken("en", Optional.of(odd)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("--language")
                    .hasMessageEndingWith("en, es");
        }
    }

    @Test
    void names_itself_whatever_is_spoken() {
        assertThat(Language.installed()).extracting(Language::ownName).containsExactly("English", "Español");
    }

    /** Decides on a machine that speaks this language, and gives it back. */
    private String spoken(String machine, Optional<String> asked) {
        Locale.setDefault(Locale.forLanguageTag(machine));
        SpokenLanguage spoken = new SpokenLanguage(asked, home, Words.of(SpokenLanguageTest.class, "console"));
        String tag = Locale.getDefault().toLanguageTag();
        spoken.close();
        assertThat(Locale.getDefault().toLanguageTag()).isEqualTo(machine);
        return tag;
    }
}
