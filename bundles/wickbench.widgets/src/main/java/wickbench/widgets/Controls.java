package wickbench.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Makes plain controls in the colours and type of a theme. A {@code &} in words marks the key that goes with Alt. */
public final class Controls {
    private final Theme theme;

    Controls(Theme theme) {
        this.theme = theme;
    }

    /** Makes a grid that lies on its parent's ground, without a margin; the keyboard goes to what is in it only. */
    public Composite box(Composite parent, int columns) {
        Composite box = new Composite(parent, SWT.NO_FOCUS);
        box.setBackground(parent.getBackground());
        box.setLayout(layout(columns, 0));
        return box;
    }

    /** Makes a row of things that breaks into further rows where the room ends. */
    public Composite row(Composite parent) {
        Composite row = new Composite(parent, SWT.NO_FOCUS);
        row.setBackground(parent.getBackground());
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = theme.metrics().grid(1);
        layout.center = true;
        row.setLayout(layout);
        return Fit.wide(row);
    }

    /** Makes a grid on a surface of its own, with an edge and a margin. */
    public Composite card(Composite parent, int columns) {
        return new Card(parent, theme, layout(columns, 2));
    }

    public Label label(Composite parent, Type type, String words) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        return style(label, type);
    }

    /** Makes less important words. */
    public Label quiet(Composite parent, String words) {
        Label label = label(parent, Type.SMALL, words);
        label.setForeground(theme.color(theme.palette().quiet()));
        return label;
    }

    /** Makes words that break into lines where the room ends. */
    public Label text(Composite parent, Type type, String words) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(words);
        return Fit.wide(style(label, type));
    }

    /** Makes a button that does what its verb says. */
    public Button button(Composite parent, String words, Runnable act) {
        return acting(new RoomyButton(parent, theme), words, act);
    }

    /** Makes one of several alike, such as one for each row: there are not letters enough, so Tab alone leads to it. */
    public Button buttonOfMany(Composite parent, String words, Runnable act) {
        Button button = button(parent, words, act);
        Names.keys(button, WidgetWords.get("keys.tab"));
        return button;
    }

    /** Makes the one button of a page that carries on; there is at most one. */
    public Button mainButton(Composite parent, String words, Runnable act) {
        return acting(new RoomyButton(parent, theme).main(), words, act);
    }

    private Button acting(RoomyButton button, String words, Runnable act) {
        button.setText(words);
        button.addListener(SWT.Selection, event -> act.run());
        return button;
    }

    public Button check(Composite parent, String words) {
        Button check = new Button(parent, SWT.CHECK);
        check.setText(words);
        // without a ground of its own, which would also fill the box to tick and hide it in the dark
        check.setFont(theme.font(Type.BODY));
        check.setForeground(theme.color(theme.palette().ink()));
        return check;
    }

    /** Makes a field of one line. */
    public Text field(Composite parent) {
        return filled(new RoomyText(parent, theme, SWT.NONE));
    }

    /** Makes a field to look for something with. */
    public Text search(Composite parent) {
        return filled(new RoomyText(parent, theme, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL));
    }

    /** Makes a field of several lines that scrolls. */
    public Text area(Composite parent) {
        return filled(new Text(parent, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL));
    }

    /** Makes a list to choose one from; nothing is chosen at first. */
    public Combo choice(Composite parent, List<String> choices) {
        Combo combo = new RoomyCombo(parent, theme);
        combo.setItems(choices.toArray(String[]::new));
        return filled(combo);
    }

    /** Dresses any control: type, words, ground. */
    public <C extends Control> C style(C control, Type type) {
        control.setFont(theme.font(type));
        control.setForeground(theme.color(theme.palette().ink()));
        control.setBackground(control.getParent().getBackground());
        return control;
    }

    private <C extends Control> C filled(C control) {
        style(control, Type.BODY);
        control.setBackground(theme.color(theme.palette().field()));
        if (theme.palette().dark()) {
            // the system's own frame around the field in focus is next to invisible in the dark
            control.addListener(
                    SWT.FocusIn,
                    event -> control.setBackground(theme.color(theme.palette().selection())));
            control.addListener(
                    SWT.FocusOut,
                    event -> control.setBackground(theme.color(theme.palette().field())));
        }
        return control;
    }

    private GridLayout layout(int columns, double margin) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = theme.metrics().grid(margin);
        layout.marginHeight = theme.metrics().grid(margin);
        layout.horizontalSpacing = theme.metrics().grid(1);
        layout.verticalSpacing = theme.metrics().grid(1);
        return layout;
    }
}
