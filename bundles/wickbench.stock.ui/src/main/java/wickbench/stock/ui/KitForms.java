package wickbench.stock.ui;

import java.nio.file.Path;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.shell.PageContext;

/** Defines kits from files. */
final class KitForms {
    private final PageContext context;
    private final StockDoors doors;
    private final Runnable done;

    KitForms(PageContext context, StockDoors doors, Runnable done) {
        this.context = context;
        this.doors = doors;
        this.done = done;
    }

    /** Lets the person choose a file, and defines what stands in it. */
    void choose(Rights rights) {
        if (rights.may(Act.KEEP_STOCK) instanceof Permission.Denied denied) {
            context.say(denied.text());
            return;
        }
        context.files().open(StockUiWords.get("kit.choose"), "*.json", "*").ifPresent(file -> define(file, rights));
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
