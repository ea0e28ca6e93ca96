package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.swt.graphics.Rectangle;

class WindowBoundsTest {

    @Property
    void aWindowAlwaysLiesWholeOnItsScreen(
            @ForAll @IntRange(min = -9000, max = 9000) int x,
            @ForAll @IntRange(min = -9000, max = 9000) int y,
            @ForAll @IntRange(min = 1, max = 9000) int width,
            @ForAll @IntRange(min = 1, max = 9000) int height) {
        Rectangle screen = new Rectangle(100, -50, 1600, 900);
        Rectangle placed = WindowBounds.onScreen(new Rectangle(x, y, width, height), screen);
        assertThat(screen.intersection(placed)).isEqualTo(placed);
        assertThat(placed.width).isEqualTo(Math.min(width, screen.width));
    }
}
