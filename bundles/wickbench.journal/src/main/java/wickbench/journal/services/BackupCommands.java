package wickbench.journal.services;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wickbench.api.backup.Backup;
import wickbench.api.backup.BackupPlan;
import wickbench.api.backup.BackupState;
import wickbench.api.backup.Backups;
import wickbench.api.backup.Restored;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.journal.Comparison;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/** Backing up and restoring on the command line. */
final class BackupCommands {
    private final Home home;
    private final Backups backups;
    private final Words words;
    private final Terminal terminal;

    BackupCommands(Home home, Backups backups, Words words, Terminal terminal) {
        this.home = home;
        this.backups = backups;
        this.words = words;
        this.terminal = terminal;
    }

    /** @param folder empty to go by the plan */
    int backUp(Optional<Path> folder) {
        var progress = terminal.progress(words.get("backup.progress"));
        Backup made = folder.map(to -> backups.backUp(to, progress)).orElseGet(() -> backups.backUpByPlan(progress));
        if (terminal.json()) {
            terminal.json(json(made));
        } else {
            line("backup.done", made.checkpoint().size(), made.folder());
        }
        return 0;
    }

    int state(Optional<Path> plan, int days, int keep, boolean none) {
        if (none) {
            backups.plan(Optional.empty());
        }
        plan.ifPresent(folder -> backups.plan(Optional.of(plan(folder, days, keep))));
        BackupState state = backups.state();
        if (terminal.json()) {
            terminal.json(json(state));
        } else {
            print(state);
        }
        return state.due() ? 1 : 0;
    }

    private static BackupPlan plan(Path folder, int days, int keep) {
        try {
            return new BackupPlan(folder.toAbsolutePath().normalize(), days, keep);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("--plan", e.getMessage()));
        }
    }

    private void print(BackupState state) {
        state.plan()
                .ifPresentOrElse(
                        plan -> line("backups.plan", plan.folder(), plan.days(), plan.keep()),
                        () -> line("backups.plan.none"));
        state.last()
                .ifPresentOrElse(
                        last -> line(
                                "backups.last",
                                age(state.age().orElseThrow().toDays()),
                                last.made(),
                                last.checkpoint().size(),
                                last.folder()),
                        () -> line("backups.last.none"));
        if (state.due()) {
            line("backups.due");
        }
    }

    private String age(long days) {
        if (days > 1) {
            return words.get("age.days", days);
        }
        return words.get(days == 1 ? "age.day" : "age.today");
    }

    private static Json json(Backup backup) {
        return Json.object()
                .with("folder", backup.folder().toString())
                .with("made", backup.made().toString())
                .with("checkpoint", JournalJson.checkpoint(Optional.of(backup.checkpoint())));
    }

    private static Json json(BackupState state) {
        return Json.object()
                .with(
                        "plan",
                        state.plan()
                                .<Json>map(plan -> Json.object()
                                        .with("folder", plan.folder().toString())
                                        .with("days", plan.days())
                                        .with("keep", plan.keep()))
                                .orElse(Json.Null.NULL))
                .with("last", state.last().map(BackupCommands::json).orElse(Json.Null.NULL))
                .with("due", state.due());
    }

    /** @param known a file with a checkpoint known from elsewhere */
    int restore(Path backup, Optional<Path> known) {
        Optional<String> checkpoint = known.map(file -> new CheckpointText(words).read(List.of(file.toString()), file));
        Restored restored =
                backups.restore(backup, home.folder(), checkpoint, terminal.progress(words.get("restore.progress")));
        if (terminal.json()) {
            terminal.json(json(restored));
        } else {
            line(
                    "restore.done",
                    restored.verification().entries(),
                    restored.from().made(),
                    restored.folder());
            line("status.root", restored.verification().root());
            terminal.line(restored.known().map(Comparison::text).orElseGet(() -> words.get("restore.unknown")));
        }
        return restored.known().filter(comparison -> !comparison.holds()).isPresent() ? 1 : 0;
    }

    private static Json json(Restored restored) {
        return Json.object()
                .with("folder", restored.folder().toString())
                .with("from", json(restored.from()))
                .with("verification", JournalJson.verification(restored.verification()))
                .with(
                        "known",
                        restored.known().<Json>map(JournalJson::comparison).orElse(Json.Null.NULL));
    }

    private void line(String key, Object... values) {
        terminal.line(words.get(key, values));
    }
}
