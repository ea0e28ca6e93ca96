package wickbench.ledger.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ProductState;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Subject;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;

/** Deciding and releasing on the page, in a window, under a name. */
class ReleasePartTest {
    @TempDir
    private Path folder;

    private ReleaseHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new ReleaseHouse(folder);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void a_batch_that_may_go_is_asked_for_by_keys_and_released_under_a_name() throws IOException {
        house.tested("S-1", "07", "control hook");
        ReleasePart page = page(ReleaseHouse.LEA);
        page.name().setFocus();
        Keyboard keys = new Keyboard(desk);
        keys.type("B-1");
        keys.enter();
        desk.await(() -> seen().words().contains("Batch B-1: may it go?"));
        desk.settle();
        desk.picture("release-batch");

        seen().press("Release\u2026");
        Shell sheet = sheet();
        assertThat(new Seen(sheet).words()).anyMatch(text -> text.startsWith("Lea Vogt (lea) signs to release it"));
        new Seen(sheet).all(Text.class).get(0).setText("all points are Negative");
        type(sheet, "not the passphrase at all");
        new Seen(sheet).press("Sign the release");
        desk.await(() -> new Seen(sheet).words().contains("That is not the passphrase of 'lea'."));
        type(sheet, ReleaseHouse.LEAS);
        new Seen(sheet).press("Sign the release");
        desk.await(sheet::isDisposed);
        assertThat(house.doors().releasing().standing(Subject.batch("B-1")).released())
                .hasSize(1);
        desk.await(() -> seen().words().stream().anyMatch(text -> text.startsWith("Released 20")));
    }

    @Test
    void a_positive_keeps_it_and_what_is_decided_is_signed() throws IOException {
        UUID positive = house.tested("S-1", "07", "control hook test").id();
        ReleasePart page = page(ReleaseHouse.LEA);
        desk.await(() -> seen().words().contains("Decide"));
        desk.settle();
        desk.picture("release-case");
        assertThat(page.table().orElseThrow().rows()).hasSize(1);

        Text cause =
                new Seen(page.side().orElseThrow().content()).all(Text.class).get(0);
        cause.setText("worn seal");
        seen().press("Destroy\u2026");
        sign("it cannot be reworked");
        desk.await(() -> state(positive) == ProductState.IN_DESTRUCTION);
        desk.await(() -> seen().has("Done\u2026"));
        seen().press("Done\u2026");
        sign("burnt, certificate 4711");
        desk.await(() -> state(positive) == ProductState.DESTROYED);

        page.show("batch:B-1");
        desk.await(() -> seen().words().contains("Batch B-1: may it go?"));
        assertThat(seen().button("Release\u2026").isEnabled()).isFalse();
        desk.settle();
        desk.picture("release-stays");
    }

    @Test
    void what_keeps_a_batch_is_told_on_the_page_and_the_button_stays_shut() {
        house.tested("S-1", "07", "control hook");
        house.tested("S-2", "L1 mixer outlet", "hazelnut-rinse", "B-2,,changeover,");
        house.tested("S-3", "L3 filler", "milk-rinse", "B-3,L3,changeover,");
        house.doors()
                .releasing()
                .plan(
                        new ReleasePlan(
                                "L3",
                                List.of(new Point("L3 filler", new MethodId("milk-rinse"))),
                                "the food-safety plan"),
                        ReleaseHouse.RUI,
                        Optional.of(ReleaseHouse.typed(ReleaseHouse.RUIS)));
        page(ReleaseHouse.LEA);
        stays("B-99", "Nothing was tested of B-99.");
        stays("B-2", "No result of B-2 names a line, so nobody knows what is asked of it.");
        stays("B-3", "A check is missing: pH of strip S-3.");
        goes("B-1");
    }

    @Test
    void a_falsified_row_keeps_a_batch_on_the_page_and_one_taken_out_is_found_when_it_is_to_be_signed()
            throws Exception {
        house.tested("S-1", "07", "control hook");
        house.behindOurBack("update \"ledger\".statement set lot = 'Z9' where sample = 'S-1'");
        page(ReleaseHouse.LEA);
        stays("B-1", "The index says otherwise of strip S-1 than the journal: it was changed behind the program.");
        desk.settle();
        desk.picture("release-differs");
        desk.close();

        house.rebuild();
        house.doors()
                .releasing()
                .plan(
                        new ReleasePlan(
                                "L1",
                                List.of(
                                        new Point("L1 mixer outlet", new MethodId("hazelnut-rinse")),
                                        new Point("L1 hopper", new MethodId("hazelnut-rinse"))),
                                "one point more"),
                        ReleaseHouse.RUI,
                        Optional.of(ReleaseHouse.typed(ReleaseHouse.RUIS)));
        house.behindOurBack("delete from \"acts\".act where kind = 'release.planned'"
                + " and seq = (select max(seq) from \"acts\".act where kind = 'release.planned')");
        page(ReleaseHouse.LEA);
        goes("B-1");
        seen().press("Release\u2026");
        Shell sheet = sheet();
        new Seen(sheet).all(Text.class).get(0).setText("all points are Negative");
        type(sheet, ReleaseHouse.LEAS);
        new Seen(sheet).press("Sign the release");
        desk.await(() -> new Seen(sheet).says("they were changed behind the program"));
        desk.settle();
        desk.picture("release-differs-sheet");
        assertThat(house.doors().releasing().standing(Subject.batch("B-1")).released())
                .isEmpty();
        sheet.close();
    }

    @Test
    void what_another_station_signed_and_is_not_here_keeps_a_batch_on_the_page() throws Exception {
        house.tested("S-1", "07", "control hook");
        page(ReleaseHouse.LEA);
        goes("B-1");
        Path share = Files.createDirectory(folder.resolve("share"));
        house.journal().others().share(Optional.of(share));
        Path bench = Files.createDirectory(share.resolve("bench"));
        Files.writeString(bench.resolve("checkpoint"), "a part of it");
        asks("B-1");
        desk.await(() -> seen().says("Not all that bench signed has come in"));
        assertThat(seen().button("Release\u2026").isEnabled()).isFalse();
        desk.settle();
        desk.picture("release-station");
        Files.writeString(bench.resolve("entries-000000.jsonl"), "{\"first\":\"rewritten\"}\n");
        asks("B-1");
        desk.await(() -> seen().says("holds of bench does not fit what that station signed"));
        assertThat(seen().button("Release\u2026").isEnabled()).isFalse();
    }

    private void stays(String batch, String why) {
        asks(batch);
        desk.await(() -> seen().says(why));
        assertThat(seen().button("Release\u2026").isEnabled()).isFalse();
    }

    private void goes(String batch) {
        asks(batch);
        desk.await(() ->
                seen().has("Release\u2026") && seen().button("Release\u2026").isEnabled());
    }

    private void asks(String batch) {
        Text name = seen().all(Text.class).get(0);
        name.setText(batch);
        seen().press("May it go?");
        desk.settle();
    }

    @Test
    void a_line_is_planned_and_a_laboratory_s_report_put_down_on_the_page() throws IOException {
        house.tested("S-1", "07", "control hook test");
        page(ReleaseHouse.RUI);
        desk.await(() -> seen().words().contains("Decide"));
        seen().press("Line plan\u2026");
        desk.await(() -> seen().says("L1: the food-safety plan"));
        seen().press("Change L1\u2026");
        Text points = seen().field("Points");
        points.setText(points.getText() + "\nL1 chute");
        seen().press("Plan\u2026");
        assertThat(seen().says("found \u2018L1 chute\u2019")).isTrue();
        points.setText(points.getText() + " = hazelnut-rinse");
        desk.settle();
        desk.picture("release-plan");
        seen().press("Plan\u2026");
        Shell sheet = sheet();
        new Seen(sheet).all(Text.class).get(0).setText("the chute was added");
        type(sheet, ReleaseHouse.RUIS);
        new Seen(sheet).press("Sign the plan");
        desk.await(sheet::isDisposed);
        assertThat(house.doors().releasing().plans())
                .singleElement()
                .satisfies(plan -> assertThat(plan.points()).hasSize(2));

        desk.await(() -> seen().words().contains("Decide"));
        seen().press("Outside laboratory\u2026");
        desk.await(() -> seen().says("Asked because of S-1, L1 mixer outlet."));
        seen().field("Laboratory").setText("Harbour Laboratory");
        seen().field("Number of the report").setText("HL-17");
        seen().press("Record it");
        assertThat(house.doors().deciding().outside(9)).isEmpty();
        seen().field("Sample sent").setText("F-1");
        seen().choose("It says", "not detected");
        seen().field("Amount").setText("0,5");
        seen().choose("Unit", "mg/kg");
        seen().choose("Counts", "marker protein");
        seen().field("Issued").setText("2026-11-21 09:00");
        desk.settle();
        desk.picture("release-outside");
        seen().press("Record it");
        desk.await(() -> seen().says("Harbour Laboratory, HL-17: hazelnut"));
        assertThat(house.doors().deciding().outside(9)).hasSize(1);

        seen().press("Outside laboratory\u2026");
        String way = "Show the case because of which it was asked";
        desk.await(() -> seen().has(way));
        desk.settle();
        desk.picture("release-outside-listed");
        seen().press(way);
        desk.await(() -> seen().words().contains("Decide") && !seen().has(way));
    }

    @Test
    void who_may_not_release_is_told_so_before_trying() {
        house.tested("S-1", "07", "control hook test");
        page(ReleaseHouse.RUI);
        desk.await(() -> seen().words().contains("Decide"));
        assertThat(seen().button("Release\u2026").isEnabled()).isFalse();
        assertThat(seen().button("Destroy\u2026").isEnabled()).isTrue();
        assertThat(seen().words()).anyMatch(text -> text.contains("asks for the role releaser"));
    }

    @Test
    void reviews_are_signed_for_what_is_chosen() throws IOException {
        house.tested("S-1", "07", "control hook");
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(ReleaseHouse.RUI));
        LedgerPart page = desk.open(parent -> {
            LedgerPart part = new LedgerPart(parent, desk, house.ledger(), house.doors());
            part.show(LedgerPart.UNREVIEWED);
            return part;
        });
        desk.await(() -> page.table().filter(table -> table.rows().size() == 2).isPresent());
        page.table().orElseThrow().select(page.table().orElseThrow().rows().get(0));
        desk.settle();
        seen().press("Review selected\u2026");
        desk.await(() -> desk.shell().getShells().length > 0);
        Shell sheet = sheet();
        type(sheet, ReleaseHouse.RUIS);
        new Seen(sheet).press("Sign the review");
        desk.await(sheet::isDisposed);
        desk.await(() -> page.table().orElseThrow().rows().size() == 1);
        assertThat(house.doors().reviewing().waiting().all()).isEqualTo(1);
        desk.picture("ledger-review");
    }

    @Test
    void a_falsified_row_is_told_on_the_ledger_page_with_what_to_do_and_does_not_leave_it() throws Exception {
        house.tested("S-1", "07", "control hook");
        house.behindOurBack("update \"ledger\".statement set place = 'elsewhere' where sample = 'S-1'");
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(ReleaseHouse.RUI));
        LedgerPart page = desk.open(parent -> {
            LedgerPart part = new LedgerPart(parent, desk, house.ledger(), house.doors());
            part.shown();
            return part;
        });
        desk.await(() -> page.table().filter(table -> table.rows().size() == 2).isPresent());
        page.table().orElseThrow().rows().stream()
                .filter(row -> row.sample().equals("S-1"))
                .forEach(row -> page.table().orElseThrow().select(row));
        desk.await(() -> seen().says("The list says otherwise of this result than the journal"));
        assertThat(seen().has("Go to the journal, to rebuild the index")).isTrue();
        assertThat(seen().words()).contains("L1 mixer outlet").doesNotContain("elsewhere");
        desk.settle();
        desk.picture("ledger-differs");

        Path out = folder.resolve("shown.csv");
        page.table().orElseThrow().export(out);
        desk.await(() -> seen().says("otherwise of strip S-1 (elsewhere) than the journal"));
        assertThat(out).doesNotExist();
    }

    private ProductState state(UUID result) {
        return house.doors().deciding().of(result).map(Case::products).orElseThrow().stream()
                .map(Product::state)
                .findFirst()
                .orElseThrow();
    }

    private ReleasePart page(PersonId actor) {
        desk = new TestDesk(false, 100, 1280, 900, Optional.of(actor));
        return desk.open(parent ->
                new ReleasePart(parent, desk, house.doors(), house.home().clock()));
    }

    private void sign(String reason) {
        Shell sheet = sheet();
        new Seen(sheet).all(Text.class).get(0).setText(reason);
        type(sheet, ReleaseHouse.LEAS);
        new Seen(sheet).press("Sign the decision");
        desk.await(sheet::isDisposed);
    }

    private Shell sheet() {
        return desk.shell().getShells()[0];
    }

    private static void type(Shell sheet, String passphrase) {
        new Seen(sheet)
                .all(Text.class)
                .get(new Seen(sheet).all(Text.class).size() - 1)
                .setText(passphrase);
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }
}
