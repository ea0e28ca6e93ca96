package wickbench.shell;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.propertytypes.ServiceRanking;
import wickbench.widgets.FileChoice;
import wickbench.widgets.FileQuestion;

/** Asks with the dialogs of the system, over the window that the person is at. */
@Component
@ServiceRanking(-100)
public final class SystemDialogs implements FileChoice {
    @Override
    public Optional<Path> ask(FileQuestion question) {
        Shell over = window(Display.getCurrent());
        String chosen = switch (question.sort()) {
            case SAVE -> file(new FileDialog(over, SWT.SAVE), question);
            case OPEN -> file(new FileDialog(over, SWT.OPEN), question);
            case FOLDER -> folder(new DirectoryDialog(over, SWT.OPEN), question);
        };
        return Optional.ofNullable(chosen).map(Path::of);
    }

    private static Shell window(Display display) {
        return Optional.ofNullable(display.getActiveShell()).orElseGet(() -> display.getShells()[0]);
    }

    private static String file(FileDialog dialog, FileQuestion question) {
        dialog.setText(question.title());
        dialog.setFileName(question.name());
        dialog.setFilterExtensions(question.endings().toArray(String[]::new));
        dialog.setOverwrite(true);
        return dialog.open();
    }

    private static String folder(DirectoryDialog dialog, FileQuestion question) {
        dialog.setText(question.title());
        dialog.setFilterPath(question.name());
        return dialog.open();
    }
}
