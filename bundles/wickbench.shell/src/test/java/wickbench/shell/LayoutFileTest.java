package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.json.Json;

class LayoutFileTest {
    private final List<String> notices = new ArrayList<>();

    @TempDir
    private Path folder;

    @Test
    void comesBackAsItWasKept() {
        open().keep("table.lots", Json.object().with("width", 90));
        assertThat(open().recall("table.lots")).contains(Json.object().with("width", 90));
        open().forget("table.lots");
        assertThat(open().recall("table.lots")).isEmpty();
        assertThat(notices).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[1]", "\u0000\u0000", "{\"a\":1}{", "{\"a\":1,\"a\":2}"})
    void setsADamagedFileAsideAndStartsAnew(String damaged) throws IOException {
        Files.writeString(folder.resolve("layout.json"), damaged);
        LayoutFile layout = open();
        assertThat(layout.recall("a")).isEmpty();
        assertThat(Files.readString(folder.resolve("layout-damaged.json"))).isEqualTo(damaged);
        assertThat(notices).hasSize(1).first().asString().contains("layout-damaged.json");
        layout.keep("a", Json.object());
        assertThat(open().recall("a")).contains(Json.object());
    }

    @Test
    void passesOverAValueOfAnotherShape() throws IOException {
        Files.writeString(folder.resolve("layout.json"), "{\"looks\":7,\"page\":{\"id\":\"bench\"}}");
        assertThat(open().recall("looks")).isEmpty();
        assertThat(open().recall("page")).isPresent();
    }

    @Test
    void saysSoWhenItCannotBeWritten() throws IOException {
        Path file = Files.createFile(folder.resolve("not-a-folder"));
        new LayoutFile(file.resolve("desk"), Runnable::run, notices::add).keep("a", Json.object());
        assertThat(notices).hasSize(1);
    }

    @Test
    void forgetsEverythingOnReset() {
        LayoutFile layout = open();
        layout.keep("a", Json.object());
        layout.reset();
        assertThat(open().recall("a")).isEmpty();
    }

    private LayoutFile open() {
        return new LayoutFile(folder, Runnable::run, notices::add);
    }
}
