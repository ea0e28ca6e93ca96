package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.lot.LotFacts;
import wickbench.api.lot.LotId;
import wickbench.api.lot.Lots;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** What the page offers and keeps before a run has begun. */
class NewRunTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private BenchPart open() {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.shown();
        desk.await(() -> !page.flow().newRun().form().offered(Item.METHOD).isEmpty());
        return page;
    }

    @Test
    void a_method_that_may_not_be_run_is_offered_with_the_reason_and_the_others_without() throws IOException {
        house = new TestHouse(folder, new BenchTime(), new NoGluten()).withMethods();
        BenchPart page = open();
        EntryForm form = page.flow().newRun().form();

        desk.await(() -> form.offered(Item.METHOD).stream().anyMatch(pick -> !pick.may()));

        assertThat(form.offered(Item.METHOD)).allSatisfy(pick -> {
            assertThat(pick.may()).isEqualTo(!pick.value().startsWith("gluten"));
            assertThat(pick.words().contains("not now")).isEqualTo(!pick.may());
        });
        form.control(Item.METHOD).setFocus();
        new Keyboard(desk).type("r");
        desk.settle();
        desk.picture("new-run-greyed");
    }

    @Test
    void fit_lots_are_offered_in_the_order_of_the_stock_room_and_a_kit_without_one_says_so() {
        house = new TestHouse(folder).withMethods();
        house.stock.add(new Shelf());
        BenchPart page = open();
        EntryForm form = page.flow().newRun().form();

        desk.await(() -> form.offered(Item.METHOD).stream().anyMatch(pick -> !pick.may()));
        form.put(Item.METHOD, "hazelnut-rinse");
        desk.await(() -> !form.offered(Item.LOT).isEmpty());

        assertThat(form.offered(Item.LOT)).extracting(Pick::value).containsExactly("early", "late");
        assertThat(form.offered(Item.METHOD))
                .filteredOn(pick -> pick.value().startsWith("milk"))
                .isNotEmpty()
                .allSatisfy(pick -> assertThat(pick.words()).contains(FlowWords.get("pick.no-lot")));
    }

    @Test
    void a_run_not_begun_outlives_a_change_of_theme() {
        house = new TestHouse(folder).withMethods();
        BenchPart page = open();
        BenchOperator operator = new BenchOperator(desk, page.flow(), house.time);
        operator.enter("hazelnut-rinse", "hz-1", "r-1", "rinse line 1", 0);
        page.flow().newRun().form().put(Item.SAMPLE, "r-2");
        page.flow().newRun().form().put(Item.REASON, "after-cleaning");
        Object draft = page.draft().orElseThrow();
        desk.close();

        desk = new TestDesk(true, 150, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart next = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        next.restore(draft);
        NewRunStage stage = next.flow().newRun();
        desk.await(() -> stage.strips().size() == 1);

        assertThat(stage.strips().get(0).unread().sample().code()).isEqualTo("r-1");
        assertThat(stage.form().text(Item.SAMPLE)).isEqualTo("r-2");
        assertThat(stage.form().text(Item.METHOD)).isEqualTo("hazelnut-rinse");
        assertThat(stage.form().text(Item.LOT)).isEqualTo("hz-1");
        assertThat(stage.form().text(Item.REASON)).isEqualTo("after-cleaning");
    }

    @Test
    void the_plan_goes_by_the_hands_and_eyes_of_whoever_works_here_and_the_desk_remembers_them() throws IOException {
        house = new TestHouse(folder).withMethods();
        BenchPart page = open();
        BenchOperator operator = new BenchOperator(desk, page.flow(), house.time);
        NewRunStage stage = page.flow().newRun();
        assertThat(stage.pace().handsOn().control().getText()).isEqualTo("45");
        assertThat(stage.pace().look().control().getText()).isEqualTo("20");

        stage.pace().handsOn().control().setText("0");
        assertThat(stage.pace().handsOn().said()).isEqualTo(FlowWords.get("pace.expected"));
        stage.pace().handsOn().control().setText("90");
        stage.pace().look().control().setText("30");
        assertThat(stage.pace().handsOn().said()).isEmpty();
        operator.enter("hazelnut-rinse", "hz-1", "r-1", "rinse line 1", 0);
        operator.enter("hazelnut-rinse", "hz-1", "r-2", "rinse line 1", 0);
        desk.picture("new-run-pace");
        operator.plan();

        assertThat(page.flow().timetable().plan().orElseThrow().plan().strips())
                .hasSize(2)
                .allSatisfy(strip -> {
                    assertThat(strip.started().minus(strip.dipStart())).isEqualTo(Duration.ofSeconds(90));
                    assertThat(strip.readEnd().minus(strip.readStart())).isEqualTo(Duration.ofSeconds(30));
                });
        BenchPart again = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        assertThat(again.flow().newRun().pace().handsOn().control().getText()).isEqualTo("90");
        assertThat(again.flow().newRun().pace().look().control().getText()).isEqualTo("30");
    }

    /** Refuses the gluten methods to everybody. */
    private record NoGluten() implements Gate {
        @Override
        public String neighbour() {
            return "training";
        }

        @Override
        public Answer ask(Question question) {
            return question.method().id().value().startsWith("gluten")
                    ? new Answer.Refused(
                            neighbour(), Map.of(), List.of(new Answer.Reason("training.none", "none", "a card")))
                    : new Answer.Cleared(neighbour(), Map.of());
        }
    }

    /** Two fit lots of the hazelnut kit, and no other. */
    private final class Shelf implements Lots {
        @Override
        public Optional<LotFacts> asOf(LotId lot, Instant instant) {
            return Optional.empty();
        }

        @Override
        public List<LotFacts> fitFor(String kit, Instant instant) {
            boolean hazelnut = house.doors().methods().all().stream()
                    .anyMatch(issued -> issued.method().kit().equals(kit)
                            && issued.method().ref().id().value().equals("hazelnut-rinse"));
            return hazelnut ? List.of(lot(kit, "early", 3), lot(kit, "late", 9)) : List.of();
        }

        private static LotFacts lot(String kit, String id, int month) {
            LocalDate day = LocalDate.of(2030, month, 1);
            return new LotFacts(new LotId(id), kit, day, day, "fit", Optional.empty());
        }
    }
}
