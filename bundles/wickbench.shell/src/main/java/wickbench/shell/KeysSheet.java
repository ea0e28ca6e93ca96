package wickbench.shell;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import wickbench.widgets.Controls;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The sheet of keys that F1 shows; Escape closes it. */
final class KeysSheet {
    private static final List<String> EVERYWHERE =
            List.of("places", "mnemonic", "rail", "larger", "first-size", "light", "help");
    private static final List<String> TABLES = List.of("filter", "copy", "all", "menu", "open");
    private static final List<String> BENCH = List.of("started", "read", "record");
    private static final List<String> STRIPS = List.of("arrows", "seen", "faint", "not-seen", "damaged", "back");

    private KeysSheet() {}

    static Shell open(Window window) {
        Shell sheet = new Shell(window.shell(), SWT.DIALOG_TRIM | SWT.RESIZE | SWT.APPLICATION_MODAL);
        Theme theme = window.looks().on(sheet.getDisplay());
        sheet.addListener(SWT.Dispose, event -> theme.dispose());
        sheet.setText(ShellWords.get("keys.title"));
        sheet.setBackground(theme.color(theme.palette().ground()));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = theme.metrics().grid(3);
        layout.marginHeight = theme.metrics().grid(3);
        layout.horizontalSpacing = theme.metrics().grid(4);
        layout.verticalSpacing = theme.metrics().grid(1);
        sheet.setLayout(layout);
        group(sheet, theme, "everywhere", EVERYWHERE);
        group(sheet, theme, "table", TABLES);
        group(sheet, theme, "bench", BENCH);
        group(sheet, theme, "strip", STRIPS);
        sheet.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                sheet.close();
            }
        });
        sheet.pack();
        sheet.setBounds(WindowBounds.middle(window.shell(), sheet.getSize()));
        sheet.open();
        return sheet;
    }

    private static void group(Composite sheet, Theme theme, String name, List<String> keys) {
        Controls controls = theme.controls();
        GridData head = new GridData(SWT.LEFT, SWT.END, false, false, 2, 1);
        head.verticalIndent =
                sheet.getChildren().length == 0 ? 0 : theme.metrics().grid(1.5);
        controls.text(sheet, Type.HEADING, ShellWords.get("keys." + name)).setLayoutData(head);
        for (String key : keys) {
            controls.label(sheet, Type.MONO, ShellWords.get("keys." + name + "." + key + ".key"));
            controls.label(sheet, Type.BODY, ShellWords.get("keys." + name + "." + key));
        }
    }
}
