package wickbench.plant.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.clean.Validation;
import wickbench.plant.clean.Validity;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Form;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.Point;
import wickbench.plant.site.Surface;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;

/** What quality states and what happened, by the forms of the page in a real window. */
class PlantFormsTest {
    @TempDir
    private Path folder;

    private PlantHouse house;
    private TestDesk desk;
    private Seen seen;
    private Keyboard keys;

    @BeforeEach
    void found() {
        house = new PlantHouse(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private void open(PersonId actor, String tab) {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(actor));
        PlantPart page = desk.open(parent -> new PlantPart(parent, desk, house.doors()));
        desk.shell().forceActive();
        page.show(tab);
        desk.settle();
        page.shown();
        seen = new Seen(desk.shell());
        keys = new Keyboard(desk);
        desk.settle();
    }

    private PlantState plant() {
        return house.doors().book().at(house.doors().book().now());
    }

    @Test
    void a_product_is_stated_and_not_stated_is_an_answer_of_its_own() throws Exception {
        open(PlantHouse.LEAD, "products");
        desk.await(() -> seen.says("Plain cream"));
        seen.press("New product…");
        seen.field("Short id").setText("oat");
        seen.field("Name").setText("Oat cream");
        seen.press("State it");
        assertThat(seen.says("Choose one of the three answers.")).isTrue();
        seen.choose("Allergens", "not stated: nobody has said");
        tick("L2");
        seen.press("State it");
        desk.await(() -> said("oat is stated."));
        assertThat(plant().product("oat").orElseThrow().stated()).isFalse();

        desk.await(() -> seen.says("Oat cream") || seen.says("Plain cream"));
        seen.press("New product…");
        seen.field("Short id").setText("oat-milk");
        seen.field("Name").setText("Oat milk cream");
        tick("L2");
        seen.choose("Allergens", "holds those that are listed");
        seen.press("State it");
        assertThat(seen.says("List at least one allergen")).isTrue();
        Combo allergen = combos().stream()
                .filter(combo -> combo.indexOf("milk") >= 0 && combo.indexOf("egg") >= 0)
                .findFirst()
                .orElseThrow();
        allergen.select(allergen.indexOf("milk"));
        seen.press("Add it");
        assertThat(seen.says("List at least one allergen")).isFalse();
        desk.picture("plant-product-form");
        seen.press("State it");
        desk.await(() -> said("oat-milk is stated."));
        assertThat(plant().product("oat-milk").flatMap(Product::holds).orElseThrow())
                .containsExactly(new Contained("milk", Form.POWDER, Optional.empty(), Optional.empty()));
    }

    @Test
    void who_may_not_state_is_told_so_before_anything_is_typed() {
        open(PlantHouse.OPERATOR, "products");
        desk.await(() -> seen.says("Plain cream"));
        seen.press("New product…");
        assertThat(seen.button("State it").isEnabled()).isFalse();
        assertThat(seen.says("reviewer")).isTrue();
    }

    @Test
    void a_point_is_stated_and_placed_by_a_click_on_the_picture() throws Exception {
        house.doors().keeping().picture(Path.of("..", "..", "demo", "floor.png"), PlantHouse.lead());
        open(PlantHouse.LEAD, "picture");
        desk.await(() -> seen.all(FloorCanvas.class).size() == 1 && seen.says("never tested"));
        desk.settle();
        seen.press("New point…");
        seen.field("Name, as samples say it").setText("L2 hopper lip");
        seen.choose("Kind of surface", "plastic");
        seen.field("Why hard to clean").setText("scratched");
        seen.press("State it");
        assertThat(seen.says("Name at least one method")).isTrue();
        seen.field("Methods, preferred first").setText("milk-swab-wet");
        desk.picture("plant-point-form");
        seen.press("State it");
        FloorCanvas floor = seen.all(FloorCanvas.class).get(0);
        desk.await(() -> floor.inWords().startsWith("Click where L2 hopper lip is"));
        click(floor, floor.getSize().x / 2, floor.getSize().y / 2);
        desk.await(() -> said("L2 hopper lip is placed."));
        Point point = plant().points().stream()
                .filter(each -> each.name().equals("L2 hopper lip"))
                .findFirst()
                .orElseThrow();
        assertThat(point.surface()).isEqualTo(Surface.PLASTIC);
        assertThat(point.hard()).contains("scratched");
        assertThat(plant().spot("L2 hopper lip").orElseThrow().x())
                .isBetween(new BigDecimal("0.4"), new BigDecimal("0.6"));
    }

    @Test
    void a_rule_is_stated_and_a_changeover_makes_its_tests_due() throws Exception {
        open(PlantHouse.LEAD, "due");
        desk.await(() -> buttons("Rules…"));
        seen.press("Rules…");
        desk.await(() -> buttons("New rule for L2…"));
        desk.picture("plant-rules");
        seen.press("New rule for L2…");
        seen.field("Short id").setText("L2-nut");
        seen.choose("When", "first-off product");
        seen.press("State it");
        assertThat(seen.says("Tick at least one point")).isTrue();
        tick("L2 first off, hazelnut-food-solid");
        tick("hazelnut");
        seen.press("State it");
        desk.await(() -> said("Rule L2-nut is stated."));
        Rule rule = plant().rules().stream()
                .map(held -> held.rule())
                .filter(each -> each.id().equals("L2-nut"))
                .findFirst()
                .orElseThrow();
        assertThat(rule.when()).isEqualTo(Rule.When.FIRST_OFF);
        assertThat(rule.leaving()).containsExactly("hazelnut");

        seen.press("Changeover made…");
        seen.choose("From", "Hazelnut milk cream");
        seen.press("Record it");
        assertThat(seen.says("Choose a product.")).isTrue();
        seen.choose("To", "Plain cream");
        seen.press("Record it");
        desk.await(() -> said("The changeover is recorded"));
        assertThat(house.doors().book().due(house.doors().book().now()))
                .anyMatch(item -> item.rule().id().equals("L2-nut"));
    }

    @Test
    void an_operator_records_the_change_that_was_looked_at() {
        open(PlantHouse.OPERATOR, "changes:L2");
        desk.await(() -> seen.all(MatrixGrid.class).size() == 1 && seen.says("Plain cream"));
        seen.all(MatrixGrid.class).get(0).choose(1, 0);
        seen.press("This change was made…");
        assertThat(seen.choice("From").getText()).isEqualTo("Milk cream");
        seen.press("Record it");
        desk.await(() -> said("The changeover is recorded"));
    }

    @Test
    void a_series_is_opened_for_the_worst_case_and_another_asks_for_a_reason() throws Exception {
        open(PlantHouse.LEAD, "cleans");
        desk.await(() -> seen.says("Hardest to get off"));
        seen.press("Open a series…");
        assertThat(seen.choice("Worst case").getText()).isEqualTo("Hazelnut milk cream");
        seen.press("Open the series");
        assertThat(seen.says("tick at least one allergen and one point")).isTrue();
        tick("L2 pump seal, milk-swab-wet");
        seen.choose("Worst case", "Fish cream");
        seen.press("Open the series");
        assertThat(seen.says("not the hardest by what is stated")).isTrue();
        assertThat(seen.says("Expected 1 to")).isTrue();
        desk.picture("plant-series-form");
        seen.field("Why this product").setText("fish sticks to the depositor");
        seen.press("Open the series");
        desk.await(() -> said("A series of CP-2 is open."));
        Validation clean = plant().clean("CP-2").orElseThrow();
        assertThat(clean.state()).isEqualTo(Validity.UNDER_WAY);
        assertThat(clean.series().orElseThrow().product()).isEqualTo("fish");
        desk.await(() -> seen.says("0 of 3"));
    }

    @Test
    void fixed_places_and_due_times_bind_the_order_and_a_circle_is_one_line() throws Exception {
        open(PlantHouse.LEAD, "order");
        desk.await(() -> seen.says("Products, in the order entered"));
        Text products = seen.field("Products, in the order entered");
        products.setText("plain, milk, nut-milk");
        Text places = seen.field("Fixed places");
        places.setText("nut-milk=3");
        places.setFocus();
        keys.enter();
        desk.await(() -> seen.says("20 min of changes"));
        places.setText("");
        Text before = seen.field("One before another");
        before.setText("plain=milk, milk=plain");
        before.setFocus();
        keys.enter();
        desk.await(() -> seen.says("One before another: these cannot each come before the next: milk, plain"));
        assertThat(seen.all(OrderBars.class).get(0).inWords()).isEmpty();
        before.setText("");
        seen.field("Made for, min").setText("plain=60, milk=60");
        Text due = seen.field("Finished by, min from the start");
        due.setText("plain=70, milk=60");
        due.setFocus();
        keys.enter();
        desk.await(() -> seen.says("No order keeps to everything that is asked."));
        desk.picture("plant-order-asked");
    }

    @Test
    void enter_in_the_due_table_makes_the_run_as_the_key_does() {
        house.doors()
                .keeping()
                .changed(
                        new wickbench.plant.changeover.ChangeMade(
                                "L2", "milk", "plain", house.doors().book().now()),
                        PlantHouse.lead());
        open(PlantHouse.OPERATOR, "due");
        desk.await(() -> buttons("Run it on the bench F4")
                && seen.button("Run it on the bench F4").isEnabled());
        desk.settle();
        seen.all(org.eclipse.swt.widgets.Table.class).get(0).setFocus();
        keys.enter();
        desk.await(() -> said("page bench at due:L2-"));
    }

    private boolean said(String part) {
        return desk.said().stream().anyMatch(word -> word.contains(part));
    }

    private boolean buttons(String verb) {
        return seen.all(Button.class).stream()
                .anyMatch(button -> button.getText().replace("&", "").equals(verb));
    }

    private void tick(String words) {
        Button tick = seen.all(Button.class).stream()
                .filter(button ->
                        (button.getStyle() & SWT.CHECK) != 0 && button.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no tick " + words));
        tick.setSelection(true);
    }

    private List<Combo> combos() {
        return seen.all(Combo.class);
    }

    private static void click(FloorCanvas floor, int x, int y) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.button = 1;
        floor.notifyListeners(SWT.MouseDown, event);
    }
}
