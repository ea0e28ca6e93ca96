package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

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
}
