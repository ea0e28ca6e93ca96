package wickbench.plant.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.programme.DueItem;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** The page in a real window, by keys. */
class PlantPageTest {
    @TempDir
    private Path folder;

    private PlantHouse house;
    private TestDesk desk;
    private PlantPart page;
    private Keyboard keys;

    @BeforeEach
    void found() {
        house = new PlantHouse(folder.resolve("home"));
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private void open(PersonId actor, String tab) {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(actor));
        page = desk.open(parent -> new PlantPart(parent, desk, house.doors()));
        desk.shell().forceActive();
        page.show(tab);
        desk.settle();
        page.shown();
        keys = new Keyboard(desk);
        desk.settle();
    }

    @Test
    void without_a_plant_the_page_says_what_to_do_first_and_a_file_fills_it() {
        open(PlantHouse.LEAD, "due");
        desk.await(() -> says("No plant is stated yet"));
        new ImportButton(desk, house.doors(), () -> page.front().reload()).read(PlantHouse.MILL);
        desk.await(() -> said("were stated anew"));
        page.show("products");
        desk.await(() ->
                house.doors().book().at(house.doors().book().now()).products().size() == 6);
    }

    @Test
    void a_bad_file_is_one_line_and_an_operator_is_told_whose_it_is() throws IOException {
        open(PlantHouse.LEAD, "due");
        Path bad = Files.writeString(folder.resolve("bad.json"), "{\"lines\": 7}");
        new ImportButton(desk, house.doors(), () -> {}).read(bad);
        desk.await(() -> said("bad.json: lines: expected a list"));
        desk.close();
        open(PlantHouse.OPERATOR, "due");
        new ImportButton(desk, house.doors(), () -> {}).read(PlantHouse.MILL);
        desk.await(() -> said("reviewer"));
        assertThat(house.doors().book().at(house.doors().book().now()).lines()).isEmpty();
    }

    @Test
    void one_key_takes_what_is_due_to_the_bench() throws IOException {
        house.furnished();
        change("milk", "plain");
        open(PlantHouse.OPERATOR, "due");
        desk.await(() -> button("Run it on the bench").isEnabled());
        DueItem item = house.doors().book().due(house.doors().book().now()).stream()
                .filter(each -> each.rule().id().equals("L2-change"))
                .findFirst()
                .orElseThrow();
        desk.picture("plant-due");
        page.front().focus();
        keys.key(SWT.F4);
        desk.await(() -> said("page bench at due:" + item.key()));
    }

    @Test
    void what_is_missed_stays_until_quality_signs_an_answer() {
        house.furnished();
        house.after(Duration.ofDays(9));
        open(PlantHouse.LEAD, "due");
        desk.await(() -> button("Answer for it").isEnabled());
        assertThat(house.doors().book().due(house.doors().book().now()))
                .anyMatch(item ->
                        item.rule().id().equals("L2-weekly") && item.state().open());
    }

    @Test
    void the_matrix_goes_by_arrows_and_each_cell_explains_itself() throws IOException {
        house.furnished();
        open(PlantHouse.LEAD, "changes:L2");
        desk.await(() -> all(MatrixGrid.class).size() == 1);
        MatrixGrid grid = all(MatrixGrid.class).get(0);
        desk.await(() -> !grid.inWords().isEmpty());
        grid.setFocus();
        keys.key(SWT.END);
        desk.settle();
        assertThat(grid.inWords()).contains("Not stated is not none");
        keys.key(SWT.HOME);
        keys.key(SWT.ARROW_DOWN);
        keys.key(SWT.ARROW_DOWN);
        desk.settle();
        assertThat(grid.inWords()).contains("no issued method sees milk (whey protein, powder)");
        assertThat(words()).anyMatch(word -> word.startsWith("Whey cream"));
        desk.picture("plant-changes");
    }

    @Test
    void the_order_of_the_day_says_what_it_saves_or_that_there_is_none() throws IOException {
        house.furnished();
        open(PlantHouse.LEAD, "order");
        desk.await(() -> !texts().isEmpty());
        Text products = texts().get(0);
        products.setText("plain, milk, nut-milk");
        products.setFocus();
        keys.enter();
        desk.await(() -> says("20 min of changes; no order takes less."));
        products.setText("milk, whey, plain");
        keys.enter();
        desk.await(() -> says("min of changes"));
        products.setText("rye");
        keys.enter();
        desk.await(() -> says("there is no product 'rye'"));
        desk.picture("plant-order");
    }

    @Test
    void points_show_their_outcome_and_one_key_goes_to_the_result() throws IOException {
        house.furnished();
        java.util.UUID result = house.read("L2 pump seal", "milk-swab-wet", true);
        Path floor = Path.of("..", "..", "demo", "floor.png");
        house.doors().keeping().picture(floor, PlantHouse.lead());
        house.doors()
                .keeping()
                .place("L2 pump seal", java.math.BigDecimal.TEN, java.math.BigDecimal.TEN, PlantHouse.lead());
        open(PlantHouse.LEAD, "picture");
        desk.await(() -> all(FloorCanvas.class).size() == 1 && says("never tested"));
        FloorCanvas canvas = all(FloorCanvas.class).get(0);
        desk.settle();
        canvas.setFocus();
        keys.key(SWT.ARROW_RIGHT);
        desk.await(() -> canvas.inWords().equals("L2 pump seal: Positive"));
        desk.picture("plant-picture");
        press("Show its result");
        desk.await(() -> said("page ledger at " + result));
        canvas.place("L2 kettle rim");
        assertThat(canvas.inWords()).contains("arrows");
    }

    @Test
    void cleans_show_how_they_stand_and_why_the_worst_is_the_worst() throws IOException {
        house.furnished();
        open(PlantHouse.LEAD, "cleans");
        desk.await(() -> says("Hardest to get off"));
        assertThat(words()).anyMatch(word -> word.contains("Hazelnut milk cream: hardest soil"));
        assertThat(button("Confirm for a year").isEnabled()).isFalse();
        desk.picture("plant-cleans");
    }

    @Test
    void what_is_late_is_told_in_the_top_bar() {
        house.furnished();
        house.after(Duration.ofDays(9));
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(PlantHouse.LEAD));
        assertThat(new PlantDue(house.doors().book()).due())
                .singleElement()
                .satisfies(due -> assertThat(due.mark().word()).isEqualTo("Plant tests late: 2"));
    }

    private void change(String from, String to) {
        house.doors()
                .keeping()
                .changed(new ChangeMade("L2", from, to, house.doors().book().now()), PlantHouse.lead());
    }

    private boolean said(String part) {
        return desk.said().stream().anyMatch(word -> word.contains(part));
    }

    private boolean says(String part) {
        return words().stream().anyMatch(word -> word.contains(part));
    }

    private List<String> words() {
        return all(Label.class).stream().map(Label::getText).toList();
    }

    private List<Text> texts() {
        return all(Text.class).stream().filter(Control::isVisible).toList();
    }

    private Button button(String verb) {
        return all(Button.class).stream()
                .filter(button -> button.getText().replace("&", "").startsWith(verb))
                .findFirst()
                .orElseThrow();
    }

    private void press(String verb) {
        button(verb).notifyListeners(SWT.Selection, new Event());
    }

    private <C extends Control> List<C> all(Class<C> type) {
        return all(desk.shell(), type);
    }

    private static <C extends Control> List<C> all(Composite box, Class<C> type) {
        java.util.ArrayList<C> found = new java.util.ArrayList<>();
        for (Control child : box.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(inner, type));
            }
        }
        return found;
    }
}
