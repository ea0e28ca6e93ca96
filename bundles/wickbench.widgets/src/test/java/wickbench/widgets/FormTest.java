package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class FormTest {
    private final Ui ui = new Ui();

    @AfterEach
    void closeWindow() {
        ui.close();
    }

    @Test
    void saysBelowTheFieldWhatIsWrongAndTakesNoRoomElse() {
        Form form = new Form(ui.shell(), ui.theme());
        Field<Text> field = form.text("&Sample");
        ui.open();
        int before = form.grid().computeSize(-1, -1).y;
        field.complain("Expected a label.");
        assertThat(field.said()).isEqualTo("Expected a label.");
        assertThat(form.grid().computeSize(-1, -1).y).isGreaterThan(before);
        field.clear();
        assertThat(form.grid().computeSize(-1, -1).y).isEqualTo(before);
        assertThat(form.grid().getChildren()[0]).isInstanceOf(Label.class);
    }

    @Test
    void namesAFieldOfSeveralLinesAtItsFirstLine() {
        Form form = new Form(ui.shell(), ui.theme());
        Field<Text> one = form.text("&Sample");
        Field<Text> several = form.field("&Note", ui.theme().controls()::area);
        ((GridData) several.control().getLayoutData()).heightHint = 200;
        ui.open();
        assertThat(middle(label(form, "&Sample"))).isCloseTo(middle(one.control()), within(1));
        Rectangle note = label(form, "&Note").getBounds();
        assertThat(note.y + note.height).isLessThan(several.control().getLocation().y + 40);
    }

    private static Control label(Form form, String words) {
        return Stream.of(form.grid().getChildren())
                .filter(child -> child instanceof Label label && label.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static int middle(Control control) {
        return control.getLocation().y + control.getSize().y / 2;
    }
}
