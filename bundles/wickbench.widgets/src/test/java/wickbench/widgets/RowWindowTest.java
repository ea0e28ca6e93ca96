package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class RowWindowTest {

    /** Whatever way one scrolls, the window is a run of the source without gap or repeat, and never grows beyond its bound. */
    @Property(tries = 300)
    void isAlwaysARunOfTheSource(
            @ForAll @IntRange(min = 0, max = 6000) int size, @ForAll @Size(max = 60) List<Boolean> steps) {
        List<Integer> all = IntStream.range(0, size).boxed().toList();
        RowWindow<Integer> window = new RowWindow<>();
        window.append(slice(all, Optional.empty()));
        for (boolean down : steps) {
            if (down && window.more()) {
                window.append(slice(all, window.nextStart()));
            } else if (!down && window.before()) {
                window.prepend(slice(all, window.previousStart()));
            }
            int from = (int) window.skipped();
            assertThat(window.rows())
                    .isEqualTo(all.subList(from, from + window.rows().size()));
            assertThat(window.rows()).hasSizeLessThanOrEqualTo(RowWindow.SLICE * RowWindow.SLICES);
            assertThat(window.more()).isEqualTo(from + window.rows().size() < size);
        }
    }

    private static Slice<Integer> slice(List<Integer> all, Optional<Integer> after) {
        int from = after.map(last -> last + 1).orElse(0);
        int to = Math.min(all.size(), from + RowWindow.SLICE);
        return new Slice<>(all.subList(from, to), to < all.size());
    }
}
