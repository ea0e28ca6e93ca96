package wickbench.journal.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.backup.Backups;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;

/** Records that stand in one place only can be lost with it. */
@Component
public final class FirstBackup implements FirstSteps {
    private final Backups backups;

    @Activate
    public FirstBackup(@Reference Backups backups) {
        this.backups = backups;
    }

    @Override
    public List<FirstStep> steps() {
        return List.of(new FirstStep(
                70,
                JournalUiWords.get("step.backup"),
                JournalUiWords.get("step.backup.text"),
                backups.state().plan().isPresent(),
                "journal",
                "backup"));
    }
}
