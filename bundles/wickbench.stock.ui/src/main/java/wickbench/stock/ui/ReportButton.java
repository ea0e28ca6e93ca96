package wickbench.stock.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import wickbench.shell.PageContext;

/** Prints how the stock room stands. */
record ReportButton(PageContext context, StockDoors doors) {
    void into(Composite actions) {
        ((GridLayout) actions.getLayout()).numColumns = 1;
        context.theme().controls().button(actions, StockUiWords.get("report.open"), () -> choose(actions));
    }

    private void choose(Composite actions) {
        FileDialog dialog = new FileDialog(actions.getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.pdf", "*.xlsx", "*.csv", "*"});
        dialog.setFileName(StockUiWords.get("report.file"));
        dialog.setOverwrite(true);
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::print);
    }

    void print(Path file) {
        context.jobs()
                .run(
                        StockUiWords.get("report.printing"),
                        progress -> {
                            doors.papers().report(doors.clock().instant(), file);
                            return file;
                        },
                        written -> context.say(StockUiWords.get("report.done", written)),
                        failure -> context.say(String.valueOf(failure.getMessage())));
    }
}
