package wickbench.figures.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ControlEditor;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The field over the cell in hand: Enter keeps and goes down, Tab keeps and goes on, Escape leaves the cell as it was. */
final class CellEdit {
    private final CellGrid grid;
    private final Theme theme;
    private final ControlEditor place;

    CellEdit(CellGrid grid, Theme theme) {
        this.grid = grid;
        this.theme = theme;
        place = new ControlEditor(grid.cursor());
        place.grabHorizontal = true;
        place.grabVertical = true;
    }

    void begin(String text) {
        Text field = new Text(grid.cursor(), SWT.NONE);
        field.setFont(theme.font(Type.BODY));
        field.setBackground(theme.color(theme.palette().field()));
        field.setForeground(theme.color(theme.palette().ink()));
        Names.give(field, () -> FiguresUiWords.get("table.edit"));
        field.setText(text);
        field.setSelection(text.length());
        field.addListener(SWT.Traverse, event -> traverse(field, event));
        field.addListener(SWT.FocusOut, event -> keep(field));
        place.setEditor(field);
        field.setFocus();
    }

    private void traverse(Text field, Event event) {
        switch (event.detail) {
            case SWT.TRAVERSE_RETURN -> end(field, event, 0, 1);
            case SWT.TRAVERSE_TAB_NEXT -> end(field, event, 1, 0);
            case SWT.TRAVERSE_TAB_PREVIOUS -> end(field, event, -1, 0);
            case SWT.TRAVERSE_ESCAPE -> {
                event.doit = false;
                field.dispose();
                grid.cursor().setFocus();
            }
            default -> {}
        }
    }

    private void end(Text field, Event event, int across, int down) {
        event.doit = false;
        keep(field);
        grid.step(across, down);
    }

    private void keep(Text field) {
        if (!field.isDisposed()) {
            String text = field.getText();
            field.dispose();
            if (!text.equals(grid.here())) {
                grid.set(text);
            }
        }
    }
}
