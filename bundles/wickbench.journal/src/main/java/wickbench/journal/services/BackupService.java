package wickbench.journal.services;

import java.nio.file.Path;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.backup.Backup;
import wickbench.api.backup.BackupPlan;
import wickbench.api.backup.BackupState;
import wickbench.api.backup.Backups;
import wickbench.api.backup.Restored;
import wickbench.api.home.Home;
import wickbench.api.progress.Progress;
import wickbench.journal.HomeBackups;

/** The back-ups of the home as a service. */
@Component(service = Backups.class)
public final class BackupService implements Backups {
    private final Backups backups;

    @Activate
    public BackupService(@Reference Home home, @Reference OpenJournal open) {
        backups = new HomeBackups(home, open::journal);
    }

    @Override
    public Backup backUp(Path folder, Progress progress) {
        return backups.backUp(folder, progress);
    }

    @Override
    public Backup backUpInto(Path folder, Progress progress) {
        return backups.backUpInto(folder, progress);
    }

    @Override
    public Backup backUpByPlan(Progress progress) {
        return backups.backUpByPlan(progress);
    }

    @Override
    public void plan(Optional<BackupPlan> plan) {
        backups.plan(plan);
    }

    @Override
    public BackupState state() {
        return backups.state();
    }

    @Override
    public Restored restore(Path backup, Path home, Optional<String> known, Progress progress) {
        return backups.restore(backup, home, known, progress);
    }
}
