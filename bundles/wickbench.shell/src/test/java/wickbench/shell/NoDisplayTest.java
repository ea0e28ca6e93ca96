package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class NoDisplayTest {

    @Test
    void saysInOneLineThatThereIsNoDisplay() throws IOException, InterruptedException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        ProcessBuilder builder = new ProcessBuilder(
                java.toString(), "-cp", System.getProperty("java.class.path"), OpenDisplay.class.getName());
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isEqualTo(3);
        assertThat(said.strip()).isEqualTo("desktop.no-display: " + ShellWords.get("no-display"));
    }
}
