package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ColumnSharesTest {
    private static final List<ColumnWish> THREE =
            List.of(new ColumnWish(100, 60), new ColumnWish(200, 180), new ColumnWish(100, 100));

    @Test
    void with_room_enough_each_has_what_it_wants() {
        assertThat(ColumnShares.of(THREE, 0)).as("no size yet").containsExactly(100, 200, 100);
        assertThat(ColumnShares.of(THREE, 400)).containsExactly(100, 200, 100);
    }

    @Test
    void with_less_each_gives_of_what_it_can_spare() {
        assertThat(ColumnShares.of(THREE, 370)).containsExactly(80, 190, 100);
        assertThat(ColumnShares.of(THREE, 340)).containsExactly(60, 180, 100);
    }

    @Test
    void with_too_little_the_next_begins_out_of_sight() {
        assertThat(ColumnShares.of(THREE, 330)).containsExactly(100, 230, 100);
        assertThat(ColumnShares.of(THREE, 270)).containsExactly(90, 180, 100);
        assertThat(ColumnShares.of(THREE, 240)).containsExactly(60, 180, 100);
        assertThat(ColumnShares.of(THREE, 50)).containsExactly(60, 180, 100);
    }

    @Property
    void no_column_gets_less_than_its_words_need_and_none_stands_half_in_sight(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 300) Integer> least,
            @ForAll @IntRange(max = 100) int more,
            @ForAll @IntRange(min = 1, max = 2000) int room) {
        List<ColumnWish> wishes =
                least.stream().map(need -> new ColumnWish(need + more, need)).toList();
        List<Integer> widths = ColumnShares.of(wishes, room);
        int edge = 0;
        for (int i = 0; i < widths.size(); i++) {
            assertThat(widths.get(i)).isGreaterThanOrEqualTo(least.get(i));
            boolean half = edge > 0 && edge < room && edge + widths.get(i) > room;
            assertThat(half).isFalse();
            edge += widths.get(i);
        }
    }
}
