package wickbench.plant.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.shell.PageContext;

/** Takes a plant in from a file; the roles are asked below. */
record ImportButton(PageContext context, PlantDoors doors, Runnable done) {

    void into(Composite parent) {
        context.theme().controls().button(parent, PlantUiWords.get("import.verb"), () -> choose(parent));
        ((GridLayout) parent.getLayout()).numColumns = 1;
    }

    private void choose(Composite parent) {
        FileDialog dialog = new FileDialog(parent.getShell(), SWT.OPEN);
        dialog.setText(PlantUiWords.get("import.title"));
        dialog.setFilterExtensions(new String[] {"*.json", "*"});
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::read);
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
