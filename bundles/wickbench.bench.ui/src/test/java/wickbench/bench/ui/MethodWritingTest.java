package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;

/** A method written in the window by keys: each step checked as it is left, kept while it is not done, signed and issued. */
class MethodWritingTest {
    @TempDir
    Path folder;

    private MethodsHouse house;
    private TestDesk desk;
    private Keyboard keys;
    private MethodsPart page;

    @BeforeEach
    void found() {
        house = new MethodsHouse(folder);
        desk = new TestDesk(false, 100, 1180, 760, Optional.of(MethodsHouse.ADA));
        keys = new Keyboard(desk);
        page = desk.open(parent -> new MethodsPart(parent, desk, house.doors()));
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void a_rinse_method_is_written_by_keys_kept_and_issued() throws IOException {
        seen().press("Write a method…");
        fill("Milk Rinse 2", "Milk in rinse water", "Milk invented kit", "3", "milk");
        assertThat(seen().words()).anyMatch(text -> text.startsWith("expected a method id of lower-case letters"));
        back(5);
        typeOver("milk-rinse-2");
        tabs(5);
        choose(2);
        tabs(1);
        keys.type("whey");
        desk.picture("method-kit");
        next();
        choose(1);
        tabs(1);
        keys.type("5");
        next();
        choose(1);
        tabs(1);
        keys.type("C");
        keys.tab();
        keys.type("T");
        next();
        keys.type("0,05");
        keys.tab();
        choose(3);
        keys.tab();
        choose(2);
        next();
        keys.type("soon");
        keys.tab();
        assertThat(seen().words()).anyMatch(text -> text.startsWith("expected minutes and seconds such as 7:30"));
        desk.picture("method-times");
        next();
        next();
        next();
        assertThat(seen().words()).anyMatch(text -> text.startsWith("It cannot be issued yet. Wrong or missing: "));
        seen().press("To Times");

        // the desk is left, and the draft taken up again
        seen().press("Leave it for later");
        desk.await(() -> seen().has("Go on with the draft…"));
        seen().press("Go on with the draft…");
        for (int i = 0; i < 4; i++) {
            next();
        }
        typeOver("5 min");
        keys.tab();
        keys.type("1:30");
        next();
        seen().press("Add a step");
        keys.type("Dip the strip.");
        next();
        keys.type("Invented.");
        next();
        assertThat(seen().words()).contains("milk-rinse-2, version 1. Milk invented kit");
        desk.picture("method-look");
        seen().press("Issue this method…");
        sign();

        Method issued = method();
        assertThat(issued.limit().value()).hasToString("0.05 mg/L");
        assertThat(issued.target().notSeen()).containsExactly("whey");
        assertThat(issued.timing().window().toSeconds()).isEqualTo(90);
        assertThat(issued.steps()).hasSize(1);
        assertThat(MethodWriting.kept(desk.memory())).isEmpty();

        desk.await(() -> seen().has("New version…"));
        seen().press("New version…");
        assertThat(seen().words()).contains("Would be version 2 of this id");
        // without a window manager nobody gives the focus back after the sheet
        desk.shell().forceActive();
        page.editor().orElseThrow().focus();
        tabs(1);
        typeOver("Milk in the last rinse");
        seen().press("Throw the draft away");
        desk.await(() -> seen().has("New version…"));
        assertThat(method().ref().version()).isEqualTo(1);
    }

    private Method method() {
        var versions = house.doors().methods().versions(new MethodId("milk-rinse-2"));
        return versions.get(versions.size() - 1).method();
    }

    private void fill(String... texts) {
        for (String text : texts) {
            keys.type(text);
            keys.tab();
        }
    }

    private void typeOver(String text) {
        keys.key(SWT.HOME);
        ((org.eclipse.swt.widgets.Text) desk.shell().getDisplay().getFocusControl()).selectAll();
        keys.type(text);
    }

    private void choose(int down) {
        for (int i = 0; i < down; i++) {
            keys.key(SWT.ARROW_DOWN);
        }
    }

    private void tabs(int many) {
        for (int i = 0; i < many; i++) {
            keys.tab();
        }
    }

    private void back(int many) {
        for (int i = 0; i < many; i++) {
            desk.shell().getDisplay().getFocusControl().traverse(SWT.TRAVERSE_TAB_PREVIOUS);
        }
    }

    private void next() {
        seen().press("Next");
    }

    private void sign() {
        Shell sheet = desk.shell().getShells()[0];
        desk.await(sheet::isVisible);
        keys.type(MethodsHouse.ADAS);
        keys.enter();
        desk.await(sheet::isDisposed);
        desk.await(() -> page.editor().isEmpty() && page.table().isPresent());
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }
}
