package wickbench.stock.ui;

import java.nio.file.Path;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;

/** Prints how the stock room stands. */
record ReportButton(PageContext context, StockDoors doors) {
    void into(Composite actions) {
        ((GridLayout) actions.getLayout()).numColumns = 1;
        context.theme().controls().button(actions, StockUiWords.get("report.open"), this::choose);
    }

    private void choose() {
        context.files()
                .save(StockUiWords.get("report.file"), "*.pdf", "*.xlsx", "*.csv", "*")
                .ifPresent(this::print);
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
