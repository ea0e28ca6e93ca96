package wickbench.bench.ui;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.widgets.Fit;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Asks for a PIN, unseen; Enter takes it, Escape leaves. */
final class PinSheet {
    private static final int WIDTH = 320;

    private final Shell sheet;
    private final Text pin;
    private Optional<Passphrase> given = Optional.empty();

    PinSheet(Shell over, Theme theme, String who) {
        sheet = new Shell(over, SWT.DIALOG_TRIM | SWT.APPLICATION_MODAL | SWT.RESIZE);
        sheet.setText(FlowWords.get("pin.title"));
        sheet.setBackground(theme.color(theme.palette().surface()));
        GridLayout layout = new GridLayout();
        layout.marginWidth = theme.metrics().grid(2);
        layout.marginHeight = theme.metrics().grid(2);
        sheet.setLayout(layout);
        theme.controls().text(sheet, Type.BODY, FlowWords.get("pin.words", who));
        pin = Fit.wide(new Text(sheet, SWT.BORDER | SWT.PASSWORD));
        theme.controls().style(pin, Type.HEADING);
        Names.give(pin, () -> FlowWords.get("pin.title"));
        Composite bar = Fit.right(theme.controls().box(sheet, 2));
        theme.controls().button(bar, FlowWords.get("pin.leave"), sheet::close);
        sheet.setDefaultButton(theme.controls().mainButton(bar, FlowWords.get("pin.take"), this::take));
        sheet.setSize(sheet.computeSize(theme.px(WIDTH), SWT.DEFAULT));
        sheet.setLocation(over.toDisplay((over.getSize().x - sheet.getSize().x) / 2, over.getSize().y / 3));
    }

    Optional<Passphrase> ask() {
        Display display = sheet.getDisplay();
        sheet.open();
        pin.setFocus();
        while (!sheet.isDisposed()) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        return given;
    }

    private void take() {
        given = Optional.of(Passphrase.of(pin.getTextChars()));
        sheet.close();
    }
}
