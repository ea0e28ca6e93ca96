package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;

class PictureTest {
    private static final Path PICTURES = Path.of("target", "pictures");

    @ParameterizedTest
    @CsvSource({"false, 100", "true, 100", "false, 150", "true, 150", "false, 200"})
    void paintsThePageInExactSize(boolean dark, int percent) {
        Path out = PICTURES.resolve("sample-" + (dark ? "dark" : "light") + "-" + percent + ".png");
        Point size = taker(SampleDesk.places()).take(wanted("ledger", dark, percent), out);

        ImageData data = new ImageData(out.toString());
        assertThat(new Point(data.width, data.height))
                .isEqualTo(size)
                .isEqualTo(new Point(1280 * percent / 100, 860 * percent / 100));
    }

    @Test
    void namesAPageThatFails(@TempDir Path folder) {
        Places places = new Places();
        Offer.add(places, "bench", new PlainPage("&Bench", (label, context) -> context.failed("no lot yet")));
        assertThatThrownBy(() -> taker(places).take(wanted("bench", false, 100), folder.resolve("out.png")))
                .isInstanceOf(Refusal.class)
                .hasMessage("the page 'bench' failed: no lot yet");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void namesAPageThatIsNeverReady(@TempDir Path folder) {
        Places places = new Places();
        Offer.add(places, "bench", new PlainPage("&Bench", (label, context) -> {}));
        assertThatThrownBy(() -> new PictureTaker(places, new Neighbours(), new Session(Optional.empty()), 1)
                        .take(wanted("bench", false, 100), folder.resolve("out.png")))
                .isInstanceOf(Refusal.class)
                .hasMessage("the page 'bench' was not ready within 1 seconds");
    }

    @Test
    void namesThePagesThereAre(@TempDir Path folder) {
        assertThatThrownBy(
                        () -> taker(SampleDesk.places()).take(wanted("plant", false, 100), folder.resolve("out.png")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("there is no page 'plant'; installed are: bench, ledger, stockroom, methods");
    }

    private static PictureTaker taker(Places places) {
        return new PictureTaker(places, new Neighbours(), new Session(Optional.empty()));
    }

    private static PictureTaker.Wanted wanted(String page, boolean dark, int percent) {
        return new PictureTaker.Wanted(page, Optional.empty(), new Looks(dark, percent), new Point(1280, 860));
    }
}
