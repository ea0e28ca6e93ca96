package wickbench.stock.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.shell.PageContext;

/** Defines kits from files. */
final class KitForms {
    private final PageContext context;
    private final StockDoors doors;
    private final Shell window;
    private final Runnable done;

    KitForms(PageContext context, StockDoors doors, Shell window, Runnable done) {
        this.context = context;
        this.doors = doors;
        this.window = window;
        this.done = done;
    }

    /** Lets the person choose a file, and defines what stands in it. */
    void choose(Rights rights) {
        if (rights.may(Act.KEEP_STOCK) instanceof Permission.Denied denied) {
            context.say(denied.text());
            return;
        }
        FileDialog dialog = new FileDialog(window, SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.json", "*"});
        dialog.setText(StockUiWords.get("kit.choose"));
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(file -> define(file, rights));
    }

    void define(Path file, Rights rights) {
        context.jobs()
                .run(
                        StockUiWords.get("kit.reading", file.getFileName()),
                        progress -> doors.keeping().define(doors.papers().kit(file), rights.by()),
                        kit -> {
                            context.say(StockUiWords.get("kit.done", kit.name()));
                            done.run();
                        },
                        failure -> context.say(String.valueOf(failure.getMessage())));
    }
}
