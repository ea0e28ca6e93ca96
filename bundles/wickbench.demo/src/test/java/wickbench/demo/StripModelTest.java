package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Strip;

class StripModelTest {
    private static final int STRIPS = 2000;
    private static final double NEVER = 0;

    private final Plant plant = DemoFiles.plant();
    private final StripModel model = new StripModel(new Chance(7));

    private int count(Format format, String kit, double tenfolds, double invalidRate, Predicate<Strip> which) {
        Plant.Kit of = plant.kits().stream()
                .filter(each -> each.id().equals(kit))
                .findFirst()
                .orElseThrow();
        return (int) IntStream.range(0, STRIPS)
                .mapToObj(i -> model.develop(format, of, new Load(tenfolds), invalidRate))
                .filter(which)
                .count();
    }

    private static boolean testThere(Strip strip) {
        return strip.test().there();
    }

    @Test
    void a_blank_shows_no_test_line_on_a_sandwich_strip_and_keeps_it_on_a_competitive_one() {
        assertThat(count(Format.SANDWICH, "milk", -9, NEVER, StripModelTest::testThere))
                .isZero();
        assertThat(count(Format.COMPETITIVE, "gluten", -9, NEVER, StripModelTest::testThere))
                .isGreaterThan(1980);
    }

    @Test
    void ten_limits_are_found_by_both_kinds() {
        assertThat(count(Format.SANDWICH, "milk", 1, NEVER, StripModelTest::testThere))
                .isGreaterThan(1980);
        assertThat(count(Format.COMPETITIVE, "gluten", 1, NEVER, StripModelTest::testThere))
                .isLessThan(20);
    }

    @Test
    void far_too_much_hides_the_test_line_and_only_a_hook_line_shows_it() {
        assertThat(count(Format.SANDWICH, "milk", 5, NEVER, StripModelTest::testThere))
                .isLessThan(20);
        assertThat(count(Format.SANDWICH_HOOK, "hazelnut", 5, NEVER, Strip::hookLost))
                .isGreaterThan(1980);
        assertThat(count(Format.SANDWICH_HOOK, "hazelnut", 0, NEVER, Strip::hookLost))
                .isZero();
    }

    @Test
    void lines_near_the_limit_are_faint_and_strong_ones_are_not() {
        Predicate<Strip> faint = strip -> strip.test() == Seen.FAINT;

        assertThat(count(Format.SANDWICH, "milk", 0, NEVER, faint)).isBetween(1400, 1800);
        assertThat(count(Format.SANDWICH, "milk", 2, NEVER, faint)).isLessThan(20);
    }

    @Test
    void the_control_line_stays_away_as_often_as_the_lot_makes_it() {
        Predicate<Strip> invalid = strip -> strip.control() == Seen.NOT_SEEN;

        assertThat(count(Format.SANDWICH, "milk", -9, 0.1, invalid)).isBetween(150, 250);
        assertThat(count(Format.SANDWICH, "milk", -9, NEVER, invalid)).isZero();
    }

    @Test
    void only_faint_lines_are_overlooked() {
        Strip faint = strip(Seen.FAINT);
        Strip strong = strip(Seen.SEEN);

        assertThat(model.seenBy(1, faint)).isEqualTo(strip(Seen.NOT_SEEN));
        assertThat(model.seenBy(0, faint)).isEqualTo(faint);
        assertThat(model.seenBy(1, strong)).isEqualTo(strong);
    }

    private static Strip strip(Seen test) {
        return new Strip(Format.SANDWICH, Map.of(LineRole.CONTROL, Seen.SEEN, LineRole.TEST, test));
    }
}
