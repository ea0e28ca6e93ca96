package wickbench.stock.face;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunSheets;

/** Takes the strips of a lot's check through the one door by which readings are recorded. */
final class CheckSheet {
    private final ReadingDoor door;
    private final RunSheets sheets;

    CheckSheet(ReadingDoor door, RunSheets sheets) {
        this.door = door;
        this.sheets = sheets;
    }

    void record(Path file, LotId lot, PersonId by) {
        String name = file.getFileName().toString();
        try (InputStream bytes = Files.newInputStream(file)) {
            List<Reading> run = sheets.read(name, bytes).orRefuse();
            run.forEach(reading -> refuseOther(name, reading, lot));
            door.record(run, by);
        } catch (IOException e) {
            throw Typed.wrong(name, "file.unreadable", e.getMessage());
        }
    }

    private static void refuseOther(String name, Reading reading, LotId lot) {
        boolean checks = reading.sample().control().isPresent()
                && reading.sample()
                        .reason()
                        .filter(why -> why == Reason.LOT_CHECK)
                        .isPresent()
                && reading.lot().equals(lot);
        if (!checks) {
            throw Typed.wrong(name, "check.other-strip", reading.sample().code(), lot);
        }
    }
}
