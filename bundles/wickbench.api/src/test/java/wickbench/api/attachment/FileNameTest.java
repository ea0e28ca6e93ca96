package wickbench.api.attachment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileNameTest {

    @ParameterizedTest
    @CsvSource({
        "../../etc/passwd, passwd",
        "C:\\Windows\\system.ini, system.ini",
        "strip 4.jpg, strip 4.jpg",
        ".., attachment",
        "'', attachment",
        "'   ', attachment",
        "a/, attachment",
        "CON, _CON",
        "con.txt, _con.txt",
        "LPT1.tar.gz, _LPT1.tar.gz",
        "CONTROL.csv, CONTROL.csv",
        ".htaccess, htaccess",
        "end., end",
        "a<b>|c?.png, a_b__c_.png",
        "stream.txt:hidden, stream.txt_hidden",
    })
    void hostile_names_become_plain_ones(String given, String expected) {
        assertThat(FileName.of(given).value()).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\0b.png", "photo\u202Egnp.exe", "line\nbreak", "tab\there", "half\uD800"})
    void control_and_direction_characters_are_gone(String given) {
        assertThat(FileName.of(given).value())
                .doesNotContain("\0", "\u202E", "\n", "\t", "\uD800")
                .contains("_");
    }

    @ParameterizedTest
    @ValueSource(strings = {".jpeg", ".csv", ""})
    void a_long_name_is_shortened_before_its_ending(String ending) {
        String name = FileName.of("ü".repeat(300) + ending).value();
        assertThat(name).hasSize(FileName.LONGEST).endsWith(ending);
    }
}
