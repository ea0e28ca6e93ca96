package wickbench.plant.ui;

import java.nio.file.Path;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.shell.PageContext;

/** Takes a plant in from a file; the roles are asked below. */
record ImportButton(PageContext context, PlantDoors doors, Runnable done) {

    void into(Composite parent) {
        context.theme().controls().button(parent, PlantUiWords.get("import.verb"), this::choose);
        ((GridLayout) parent.getLayout()).numColumns = 1;
    }

    private void choose() {
        context.files().open(PlantUiWords.get("import.title"), "*.json", "*").ifPresent(this::read);
    }

    /** Reads a file, all of it or none. */
    void read(Path file) {
        Acting.run(
                context,
                doors,
                Act.KEEP_PLANT,
                "import.doing",
                by -> doors.keeping().state(doors.keeping().read(file), Actor.of(by)),
                news -> {
                    context.say(PlantUiWords.get("import.done", news, file.getFileName()));
                    done.run();
                });
    }
}
