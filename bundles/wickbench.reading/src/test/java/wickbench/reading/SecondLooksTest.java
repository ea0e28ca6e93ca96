package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.SecondLook;
import wickbench.api.reading.Strip;

class SecondLooksTest {

    @Test
    void a_faint_test_or_hook_line_asks_for_a_second_reader_drawn_or_not() {
        assertThat(SecondLooks.of(strip(Seen.SEEN, Seen.FAINT), false)).contains(SecondLook.FAINT);
        assertThat(SecondLooks.of(strip(Seen.FAINT, Seen.NOT_SEEN), true)).contains(SecondLook.FAINT);
    }

    @Test
    void a_drawn_strip_asks_for_one_only_if_it_looks_negative() {
        assertThat(SecondLooks.of(strip(Seen.SEEN, Seen.NOT_SEEN), true)).contains(SecondLook.DRAWN);
        assertThat(SecondLooks.of(strip(Seen.SEEN, Seen.NOT_SEEN), false)).isEmpty();
        assertThat(SecondLooks.of(strip(Seen.SEEN, Seen.SEEN), true)).isEmpty();
        assertThat(SecondLooks.of(strip(Seen.DAMAGED, Seen.NOT_SEEN), true)).isEmpty();
    }

    @Test
    void none_and_all_are_drawn_at_the_ends_and_about_the_share_between() {
        assertThat(drawn("0")).isZero();
        assertThat(drawn("1")).isEqualTo(4000);
        // four standard deviations of a binomial of 4,000 with 0.2
        assertThat(drawn("0.2")).isBetween(800 - 101L, 800 + 101L);
    }

    @Test
    void a_larger_share_draws_at_least_the_same_strips() {
        for (long i = 0; i < 500; i++) {
            UUID id = new UUID(i, -i);
            if (SecondLooks.drawn(id, new BigDecimal("0.1"))) {
                assertThat(SecondLooks.drawn(id, new BigDecimal("0.3"))).isTrue();
            }
        }
    }

    private static long drawn(String share) {
        return LongStream.range(0, 4000)
                .filter(i -> SecondLooks.drawn(new UUID(7, i), new BigDecimal(share)))
                .count();
    }

    private static Strip strip(Seen hook, Seen test) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        lines.put(LineRole.CONTROL, Seen.SEEN);
        lines.put(LineRole.HOOK, hook);
        lines.put(LineRole.TEST, test);
        return new Strip(Format.SANDWICH_HOOK, lines);
    }
}
