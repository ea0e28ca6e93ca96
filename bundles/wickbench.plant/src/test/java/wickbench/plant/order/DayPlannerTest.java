package wickbench.plant.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.plant.order.DayOrder.Found;
import wickbench.plant.order.DayRequest.Before;

class DayPlannerTest {
    private static final int CASES = 400;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void small_days_are_those_that_trying_every_order_finds(boolean round) {
        Random chance = new Random(17);
        int impossible = 0;
        for (int i = 0; i < CASES; i++) {
            DayRequest request = drawn(chance, 1 + chance.nextInt(6), round);
            Optional<BigDecimal> least = ExhaustiveOrder.least(request);
            DayOrder answer = DayPlanner.plan(request);
            if (least.isEmpty()) {
                impossible++;
                assertThat(answer).isInstanceOf(DayOrder.Impossible.class);
            } else {
                Found found = (Found) answer;
                assertThat(found.total()).as("%s", request).isEqualByComparingTo(least.get());
                assertThat(found.optimal()).isTrue();
                assertThat(ExhaustiveOrder.minutes(request, found.order()).orElseThrow())
                        .isEqualByComparingTo(found.total());
            }
        }
        assertThat(impossible).isBetween(10, CASES - 100);
    }

    @Test
    void no_order_is_below_the_bound_and_the_search_for_many_products_finds_none_below_the_least() {
        Random chance = new Random(18);
        int reached = 0;
        for (int i = 0; i < CASES; i++) {
            DayRequest request = drawn(chance, 2 + chance.nextInt(5), i % 2 == 0);
            Optional<BigDecimal> least = ExhaustiveOrder.least(request);
            Rules rules = new Rules(request);
            if (least.isPresent()) {
                long exact = ChangeTable.thousandths(least.get());
                assertThat(Assignment.bound(rules)).isLessThanOrEqualTo(exact);
                Optional<int[]> order = Improving.order(rules);
                order.ifPresent(some ->
                        assertThat(rules.table().total(some, rules.round())).isGreaterThanOrEqualTo(exact));
                reached += order.isPresent() ? 1 : 0;
            } else {
                assertThat(Improving.order(rules)).isEmpty();
            }
        }
        assertThat(reached).isGreaterThan(CASES / 3);
    }

    @Test
    void many_products_get_an_order_and_a_bound_that_it_is_held_against() {
        Random chance = new Random(19);
        DayRequest request = DayRequest.of(table(chance, 40, 0), false);
        Found found = (Found) DayPlanner.plan(request);
        assertThat(found.order())
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 40).boxed().toList());
        assertThat(ExhaustiveOrder.minutes(request, found.order()).orElseThrow())
                .isEqualByComparingTo(found.total());
        assertThat(found.bound()).isLessThanOrEqualTo(found.total());
        assertThat(found.total()).isLessThan(found.entered().orElseThrow());
        assertThat(DayPlanner.plan(request)).isEqualTo(found);
    }

    @Test
    void four_hundred_products_are_answered() {
        Found found = (Found) DayPlanner.plan(DayRequest.of(table(new Random(20), ChangeTable.MOST, 0), false));
        assertThat(found.order()).doesNotHaveDuplicates().hasSize(ChangeTable.MOST);
        assertThat(found.bound()).isLessThanOrEqualTo(found.total());
    }

    @Test
    void many_products_with_no_way_on_are_proven_impossible() {
        List<List<Optional<BigDecimal>>> rows = new ArrayList<>();
        for (int from = 0; from < 20; from++) {
            int row = from;
            rows.add(IntStream.range(0, 20)
                    .mapToObj(to -> row < 2 || to < 2 ? Optional.<BigDecimal>empty() : Optional.of(BigDecimal.ONE))
                    .toList());
        }
        assertThat(DayPlanner.plan(DayRequest.of(new ChangeTable(names(20), rows), false)))
                .isInstanceOf(DayOrder.Impossible.class);
    }

    @Test
    void one_product_needs_no_change() {
        for (boolean round : List.of(false, true)) {
            Found found = (Found) DayPlanner.plan(DayRequest.of(table(new Random(1), 1, 0), round));
            assertThat(found.total()).isZero();
            assertThat(found.saving()).contains(BigDecimal.ZERO);
        }
    }

    private static DayRequest drawn(Random chance, int n, boolean round) {
        ChangeTable table = table(chance, n, 5);
        if (round) {
            return DayRequest.of(table, true);
        }
        Map<Integer, Integer> places = new HashMap<>();
        Map<Integer, BigDecimal> runs = new HashMap<>();
        Map<Integer, BigDecimal> due = new HashMap<>();
        Set<Before> before = new HashSet<>();
        List<Integer> products = new ArrayList<>(IntStream.range(0, n).boxed().toList());
        Collections.shuffle(products, chance);
        for (int product : products) {
            runs.put(product, BigDecimal.valueOf(chance.nextInt(100), 1));
            if (chance.nextInt(6) == 0) {
                due.put(product, BigDecimal.valueOf(chance.nextInt(20 * n)));
            }
            if (chance.nextInt(8) == 0) {
                int place = chance.nextInt(n);
                places.entrySet().removeIf(fixed -> fixed.getValue() == place);
                places.put(product, place);
            }
            if (chance.nextInt(8) == 0 && chance.nextInt(n) != product) {
                before.add(new Before(product, (product + 1) % n));
            }
        }
        before.removeIf(pair -> pair.first() == pair.then());
        return new DayRequest(table, false, places, runs, due, before);
    }

    private static ChangeTable table(Random chance, int n, int oneInForbidden) {
        List<List<Optional<BigDecimal>>> rows = new ArrayList<>();
        for (int from = 0; from < n; from++) {
            rows.add(IntStream.range(0, n)
                    .mapToObj(to -> oneInForbidden > 0 && chance.nextInt(oneInForbidden) == 0
                            ? Optional.<BigDecimal>empty()
                            : Optional.of(BigDecimal.valueOf(chance.nextInt(300), 1)))
                    .toList());
        }
        return new ChangeTable(names(n), rows);
    }

    private static List<String> names(int n) {
        return IntStream.rangeClosed(1, n).mapToObj(Integer::toString).toList();
    }
}
