package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.bench.evidence.Verifications.Verified;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.TableText;
import wickbench.reading.MethodJson;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.ChartView;

/** A method verified in the window: kept sums chosen as evidence, signed, shown on its card and printed. */
class VerifyingTest {
    private static final MethodId EGG = new MethodId("egg-swab-dry");

    @TempDir
    Path folder;

    private MethodsHouse house;
    private TestDesk desk;
    private Keyboard keys;

    @BeforeEach
    void found() throws IOException {
        house = new MethodsHouse(folder);
        house.adaSits();
        Path file = Path.of("../../demo/methods/egg-swab-dry.json");
        Method egg = MethodJson.read("egg", Files.readString(file)).orRefuse();
        house.doors().methods().issue(egg, MethodsHouse.ADA);
        keep(
                "detection",
                new Given(
                        Map.of(),
                        Map.of(
                                "study",
                                TableText.of("", "level,tests,positives\n0,5,0\n0.5,20,6\n1,20,12\n2,20,18\n4,20,20"))),
                "Egg on steel");
        keep(
                "carry-over",
                new Given(
                        Map.of("area", "3", "recovery", ".8", "batch", "300", "first-off", "10", "action-level", "4"),
                        Map.of()),
                "Line 1");
        desk = new TestDesk(false, 100, 1180, 900, Optional.of(MethodsHouse.ADA));
        keys = new Keyboard(desk);
    }

    private void keep(String id, Given given, String about) {
        Sum sum = Sums.find(id).orElseThrow();
        house.kept().keep(MethodsHouse.ADA, sum, (Reckoned.Done) sum.reckon(given), Optional.of(about));
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void kept_sums_show_for_what_a_method_works() throws IOException {
        MethodsPart page = desk.open(parent -> new MethodsPart(parent, desk, house.doors()));
        desk.await(() -> seen().has("Verify…"));
        assertThat(seen().words()).anyMatch(text -> text.startsWith("Nobody has shown yet that this version works"));
        seen().press("Verify…");
        desk.await(() -> seen().words().contains("What shows it"));
        keys.tab();
        keys.type("Stainless steel");
        seen().press("Verify…");
        assertThat(seen().words()).contains("is missing; choose what shows it, or say here where it is shown");
        checks().forEach(check -> check.setSelection(true));
        assertThat(checks()).hasSize(2).allMatch(check -> check.getText().contains("Ada Brook"));
        seen().press("Verify…");
        sign("Sign and verify");
        desk.await(() ->
                seen().words().stream().anyMatch(text -> text.startsWith("Stainless steel\nversion 1, by Ada Brook")));

        // 3 m², recovery 0.8, the first 10 kg: 106.667 µg/100 cm², computed by hand; the limit is 2.1 µg on 120 cm²
        assertThat(seen().words())
                .anyMatch(
                        text -> text.startsWith(
                                "This method can tell: its limit in the sample, 1.75 µg/100 cm², does not lie above the 106.667 µg"));
        page.side().orElseThrow().reveal(seen().all(ChartView.class).get(0));
        desk.picture("method-verified");
        Verified verified = house.doors().verifications().of(EGG).get(0);
        assertThat(verified.signed()).isTrue();

        print("card.pdf", "evidence.pdf");

        seen().press("It no longer holds…");
        Shell sheet = sheet();
        keys.type("another steel");
        keys.tab();
        sign("Sign and end it");
        desk.await(() -> seen().words().stream().anyMatch(text -> text.endsWith("another steel")));
        assertThat(sheet.isDisposed()).isTrue();
        assertThat(house.doors().verifications().of(EGG).get(0).ended()).isPresent();
    }

    private void print(String card, String evidence) throws IOException {
        MethodPaperActs papers = new MethodPaperActs(desk, house.doors().papers());
        Path to = Files.createDirectories(Path.of("target/pictures"));
        papers.print(house.doors().papers()::card, EGG, to.resolve(card));
        papers.print(house.doors().papers()::evidence, EGG, to.resolve(evidence));
        desk.await(() -> desk.said().stream()
                        .filter(text -> text.endsWith(" is printed."))
                        .count()
                == 2);
        for (String name : List.of(card, evidence)) {
            assertThat(Files.readAllBytes(to.resolve(name)))
                    .startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        }
        papers.print(house.doors().papers()::card, EGG, to.resolve("card.txt"));
        desk.await(() -> desk.said().stream()
                .anyMatch(text -> text.contains("expected a file that ends in .pdf, found card.txt")));
    }

    private Shell sheet() {
        desk.await(() -> desk.shell().getShells().length > 0);
        Shell sheet = desk.shell().getShells()[0];
        desk.await(sheet::isVisible);
        return sheet;
    }

    private void sign(String verb) {
        Shell sheet = sheet();
        keys.type(MethodsHouse.ADAS);
        new Seen(sheet).button(verb);
        keys.enter();
        desk.await(sheet::isDisposed);
    }

    private List<Button> checks() {
        return seen().all(Button.class).stream()
                .filter(button -> (button.getStyle() & SWT.CHECK) != 0)
                .toList();
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }
}
