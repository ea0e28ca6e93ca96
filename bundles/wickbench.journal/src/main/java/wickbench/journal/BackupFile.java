package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import wickbench.api.backup.Backup;
import wickbench.api.backup.BackupPlan;
import wickbench.api.check.Checked;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/** The plan for back-ups and the newest one, in {@code backups.json} of the home; {@code docs/formats/backups-1.schema.json}. */
record BackupFile(Optional<BackupPlan> plan, Optional<Backup> last) {
    private static final String FILE = "backups.json";

    static BackupFile read(Path home) throws IOException {
        Path file = home.resolve(FILE);
        return Files.isRegularFile(file)
                ? JsonReader.readObject(file.toString(), Files.readString(file))
                        .then(object -> read(file.toString(), object))
                        .orRefuse()
                : new BackupFile(Optional.empty(), Optional.empty());
    }

    private static Checked<BackupFile> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<BackupPlan> plan = fields.optionalChild("plan").map(BackupFile::plan);
        Optional<Backup> last = fields.optionalChild("last").flatMap(BackupFile::last);
        return fields.finish(() -> new BackupFile(plan, last));
    }

    private static BackupPlan plan(Fields fields) {
        return new BackupPlan(Path.of(fields.text("folder")), (int) fields.whole("days"), (int) fields.whole("keep"));
    }

    private static Optional<Backup> last(Fields fields) {
        Path folder = Path.of(fields.text("folder"));
        Optional<Instant> made = fields.optionalInstant("made");
        return made.flatMap(at -> Claim.read(fields.text("checkpoint"))
                .filter(claim -> claim.note().isPresent())
                .map(claim -> new Backup(
                        folder,
                        at,
                        new Checkpoint(
                                claim.station(),
                                claim.size(),
                                new Hash(claim.root().hex()),
                                claim.note().orElseThrow().whole()))));
    }

    BackupFile with(Optional<BackupPlan> other) {
        return new BackupFile(other, last);
    }

    BackupFile with(Backup newest) {
        return new BackupFile(plan, Optional.of(newest));
    }

    void write(Disk disk, Path home) throws IOException {
        Json.Obj object = Json.object();
        if (plan.isPresent()) {
            object = object.with(
                    "plan",
                    Json.object()
                            .with("folder", plan.get().folder().toString())
                            .with("days", plan.get().days())
                            .with("keep", plan.get().keep()));
        }
        if (last.isPresent()) {
            object = object.with(
                    "last",
                    Json.object()
                            .with("folder", last.get().folder().toString())
                            .with("made", last.get().made().toString())
                            .with("checkpoint", last.get().checkpoint().note()));
        }
        disk.place(home.resolve(FILE), (object.canonical() + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
