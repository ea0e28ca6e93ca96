package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

class NativeSheetTest {
    private static final RGB FRAME = new RGB(0x7d, 0x8a, 0x97);

    @Test
    void an_empty_box_to_tick_has_a_frame_that_can_be_seen() {
        Display display = new Display();
        try {
            assertThat(frame(display)).isZero();
            assertThat(NativeSheet.lay()).isTrue();
            assertThat(frame(display)).isGreaterThan(20);
        } finally {
            display.dispose();
        }
    }

    /** Counts the pixels of an empty box that have the colour of the frame. */
    private static int frame(Display display) {
        Shell shell = new Shell(display, SWT.NO_TRIM);
        shell.setLayout(new FillLayout());
        new Button(shell, SWT.CHECK);
        shell.setSize(80, 80);
        shell.open();
        boolean[] over = {false};
        display.timerExec(500, () -> over[0] = true);
        EventLoop.until(display, () -> over[0]);
        Image image = new Image(display, 80, 80);
        GC gc = new GC(image);
        shell.print(gc);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        shell.dispose();
        int found = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                if (data.palette.getRGB(data.getPixel(x, y)).equals(FRAME)) {
                    found++;
                }
            }
        }
        return found;
    }
}
