package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureTest {
    private static final Path PICTURES = Path.of("target", "pictures");

    @ParameterizedTest
    @CsvSource({"false, 100", "true, 100", "false, 150", "true, 150", "false, 200"})
    void paintsThePageInExactSize(boolean dark, int percent) {
        Path out = PICTURES.resolve("sample-" + (dark ? "dark" : "light") + "-" + percent + ".png");
        Point size = taker(SampleDesk.places()).take(wanted("ledger", dark, percent), out);

        ImageData data = new ImageData(out.toString());
        assertThat(new Point(data.width, data.height)).isEqualTo(size).isEqualTo(new Point(1280 * percent / 100, 860 * percent / 100));
    }

    private static PictureTaker taker(Places places) {
        return new PictureTaker(places, new Neighbours(), new Session(Optional.empty()));
    }

    private static PictureTaker.Wanted wanted(String page, boolean dark, int percent) {
        return new PictureTaker.Wanted(page, Optional.empty(), new Looks(dark, percent), new Point(1280, 860));
    }
}
