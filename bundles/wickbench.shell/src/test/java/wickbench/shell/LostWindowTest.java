package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.json.Json;

/** A window that was last seen where no screen is any more, in the real window. */
class LostWindowTest {
    @TempDir
    private Path folder;

    private final Display display = Display.getDefault();
    private final Shell shell = new Shell(display);

    @AfterEach
    void close() {
        display.dispose();
    }

    @ParameterizedTest
    @CsvSource({
        "9000, 9000, 800, 600",
        "-5000, 20, 800, 600",
        "50, -4000, 800, 600",
        "0, 0, 90000, 90000",
        "2147483647, 2147483647, 2147483647, 2147483647"
    })
    void it_comes_back_whole_on_a_screen_that_is_there(long x, long y, long width, long height) {
        layout().keep("window", bounds(x, y, width, height));

        WindowBounds.follow(shell, layout());
        shell.open();

        Rectangle screen = display.getPrimaryMonitor().getClientArea();
        assertThat(screen.intersection(shell.getBounds())).isEqualTo(shell.getBounds());
        assertThat(shell.getBounds().width).isPositive();
    }

    @Test
    void what_is_no_place_at_all_is_passed_over() {
        layout().keep("window", bounds(10, 10, 0, -7));

        WindowBounds.follow(shell, layout());
        shell.open();

        assertThat(shell.getSize().x).isGreaterThan(600);
    }

    private static Json.Obj bounds(long x, long y, long width, long height) {
        return Json.object().with("x", x).with("y", y).with("width", width).with("height", height);
    }

    private LayoutFile layout() {
        return new LayoutFile(folder, Runnable::run, notice -> {});
    }
}
