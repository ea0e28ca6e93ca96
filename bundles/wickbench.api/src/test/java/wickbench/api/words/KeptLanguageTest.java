package wickbench.api.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptLanguageTest {
    @TempDir
    Path home;

    @Test
    void is_kept_until_the_machine_decides_again() {
        KeptLanguage kept = new KeptLanguage(home);
        assertThat(kept.read()).isEmpty();
        kept.write(Optional.of(Language.ENGLISH));
        assertThat(new KeptLanguage(home).read()).contains(Language.ENGLISH);
        kept.write(Optional.empty());
        assertThat(kept.read()).isEmpty();
        assertThat(home.resolve("desk")).isEmptyDirectory();
    }

    @Test
    void is_none_where_the_file_names_none_that_is_installed() throws IOException {
        Files.createDirectories(home.resolve("desk"));
        for (String odd : new String[] {"", "xx\n", "../en", "\u00e9\u0000"}) {
            Files.writeString(home.resolve("desk/language"), odd);
            assertThat(new KeptLanguage(home).read()).as(odd).isEmpty();
        }
    }
}
