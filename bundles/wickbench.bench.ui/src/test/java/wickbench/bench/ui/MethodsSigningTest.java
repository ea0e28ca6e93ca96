package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.person.PersonId;
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
        press(desk.shell(), "Issue this method…");
        Shell sheet = sheet();
        assertThat(words(sheet))
                .anyMatch(text -> text.startsWith("Ada Brook (p-01) signs to issue this method."))
                .anyMatch(text -> text.startsWith("Without a signature the entry is marked unsigned."));

        type(sheet, "not the passphrase at all");
        press(sheet, "Sign and issue");
        desk.await(() -> words(sheet).contains("That is not the passphrase of 'p-01'."));
        assertThat(newest()).isEmpty();

        type(sheet, MethodsHouse.ADAS);
        press(sheet, "Sign and issue");
        desk.await(sheet::isDisposed);
        desk.await(() -> page.table().filter(table -> !table.rows().isEmpty()).isPresent());
        assertThat(newest().orElseThrow().signed()).isTrue();
        assertThat(desk.said()).contains("milk-rinse v1 is in force; signed.");
        desk.await(() -> words(desk.shell()).stream()
                .anyMatch(text -> text.contains("issued by Ada Brook (p-01), who signs to issue it")));
        desk.picture("methods-signed");
    }

    @Test
    void what_goes_unsigned_is_marked_so() throws IOException {
        house.adaSits();
        MethodsPart page = page(MethodsHouse.ADA);
        read(page, MILK);
        press(desk.shell(), "Issue this method…");
        press(sheet(), "Do it unsigned");
        desk.await(() -> page.table().filter(table -> !table.rows().isEmpty()).isPresent());
        assertThat(newest().orElseThrow().signed()).isFalse();

        desk.await(() -> button(desk.shell(), "Withdraw…").isPresent());
        press(desk.shell(), "Withdraw…");
        Shell sheet = sheet();
        press(sheet, "Sign and withdraw");
        assertThat(words(sheet)).contains("Say why first.");
        texts(sheet).get(0).setText("The kit is no longer made.");
        press(sheet, "Do it unsigned");
        desk.await(() -> newest().orElseThrow().withdrawal().isPresent());
        assertThat(newest().orElseThrow().withdrawal().orElseThrow().signed()).isFalse();
        desk.await(() -> words(desk.shell()).stream()
                .anyMatch(text -> text.equals("by Ada Brook (p-01), not signed: The kit is no longer made.")));
    }

    @Test
    void who_may_not_is_told_so_before_trying() {
        MethodsPart page = page(MethodsHouse.BO);
        read(page, MILK);
        assertThat(button(desk.shell(), "Issue this method…").orElseThrow().isEnabled())
                .isFalse();
        assertThat(words(desk.shell()))
                .contains("'p-02' may not issue a method: that asks for the role reviewer or administrator.");
    }

    @Test
    void a_file_that_is_no_method_says_what_is_wrong() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.json"), "{\"id\":\"x\"}");
        MethodsPart page = page(MethodsHouse.ADA);
        read(page, wrong);
        assertThat(words(desk.shell())).anyMatch(text -> text.endsWith("wrong.json cannot be issued:"));
        assertThat(button(desk.shell(), "Issue this method…")).isEmpty();
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
        texts(sheet).get(texts(sheet).size() - 1).setText(passphrase);
    }

    private static void press(Composite in, String verb) {
        button(in, verb).orElseThrow().notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
    }

    private static Optional<Button> button(Composite in, String verb) {
        return all(in).filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(button -> button.getText().equals(verb))
                .findFirst();
    }

    private static List<Text> texts(Composite in) {
        return all(in).filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    private static List<String> words(Composite in) {
        return all(in).filter(Label.class::isInstance)
                .map(label -> ((Label) label).getText())
                .toList();
    }

    private static Stream<Control> all(Control control) {
        return control instanceof Composite parent
                ? Stream.concat(
                        Stream.of(control), Stream.of(parent.getChildren()).flatMap(MethodsSigningTest::all))
                : Stream.of(control);
    }
}
