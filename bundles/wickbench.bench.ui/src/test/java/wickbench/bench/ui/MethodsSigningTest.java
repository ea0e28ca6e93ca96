package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.person.PersonId;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;

/** Methods issued and withdrawn on the page, under a name or marked unsigned. */
class MethodsSigningTest {
    private static final Path MILK = Path.of("../../demo/methods/milk-rinse.json");

    @TempDir
    Path folder;

    private MethodsHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new MethodsHouse(folder);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void a_method_is_read_from_a_file_and_signed_by_the_passphrase() throws IOException {
        MethodsPart page = page(MethodsHouse.ADA);
        read(page, MILK);
        seen().press("Issue this method…");
        Shell sheet = sheet();
        assertThat(new Seen(sheet).words())
                .anyMatch(text -> text.startsWith("Ada Brook (p-01) signs to issue this method."))
                .anyMatch(text -> text.startsWith("Without a signature the entry is marked unsigned."));

        type(sheet, "not the passphrase at all");
        new Seen(sheet).press("Sign and issue");
        desk.await(() -> new Seen(sheet).words().contains("That is not the passphrase of 'p-01'."));
        assertThat(newest()).isEmpty();

        type(sheet, MethodsHouse.ADAS);
        new Seen(sheet).press("Sign and issue");
        desk.await(sheet::isDisposed);
        desk.await(() -> page.table().filter(table -> !table.rows().isEmpty()).isPresent());
        assertThat(newest().orElseThrow().signed()).isTrue();
        assertThat(desk.said()).contains("milk-rinse v1 is in force; signed.");
        desk.await(() -> seen().words().stream()
                .anyMatch(text -> text.contains("issued by Ada Brook (p-01), who signs to issue it")));
        desk.picture("methods-signed");
    }

    @Test
    void what_goes_unsigned_is_marked_so() throws IOException {
        house.adaSits();
        MethodsPart page = page(MethodsHouse.ADA);
        read(page, MILK);
        seen().press("Issue this method…");
        new Seen(sheet()).press("Do it unsigned");
        desk.await(() -> page.table().filter(table -> !table.rows().isEmpty()).isPresent());
        assertThat(newest().orElseThrow().signed()).isFalse();

        desk.await(() -> seen().has("Withdraw…"));
        seen().press("Withdraw…");
        Shell sheet = sheet();
        new Seen(sheet).press("Sign and withdraw");
        assertThat(new Seen(sheet).words()).contains("Say why first.");
        new Seen(sheet).all(Text.class).get(0).setText("The kit is no longer made.");
        new Seen(sheet).press("Do it unsigned");
        desk.await(() -> newest().orElseThrow().withdrawal().isPresent());
        assertThat(newest().orElseThrow().withdrawal().orElseThrow().signed()).isFalse();
        desk.await(() -> seen().words().stream()
                .anyMatch(text -> text.equals("by Ada Brook (p-01), not signed: The kit is no longer made.")));
    }

    @Test
    void who_may_not_is_told_so_before_trying() {
        MethodsPart page = page(MethodsHouse.BO);
        read(page, MILK);
        assertThat(seen().button("Issue this method…").isEnabled()).isFalse();
        assertThat(seen().words())
                .contains("'p-02' may not issue a method: that asks for the role reviewer or administrator.");
    }

    @Test
    void a_file_that_is_no_method_says_what_is_wrong() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.json"), "{\"id\":\"x\"}");
        MethodsPart page = page(MethodsHouse.ADA);
        read(page, wrong);
        assertThat(seen().words()).anyMatch(text -> text.endsWith("wrong.json cannot be issued:"));
        assertThat(seen().has("Issue this method…")).isFalse();
    }

    private MethodsPart page(PersonId actor) {
        desk = new TestDesk(false, 100, 1180, 760, Optional.of(actor));
        return desk.open(parent -> new MethodsPart(parent, desk, house.doors()));
    }

    private void read(MethodsPart page, Path file) {
        boolean[] shown = new boolean[1];
        page.acts().read(file, draft -> {
            page.show(draft);
            shown[0] = true;
        });
        desk.await(() -> shown[0]);
    }

    private Optional<IssuedMethod> newest() {
        return house.doors().methods().versions(new MethodId("milk-rinse")).stream()
                .reduce((older, newer) -> newer);
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
