package wickbench.ledger.services;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RunSheets;
import wickbench.api.reading.Sample;
import wickbench.ledger.ResultDetail;

/** Corrects a reading through the one door; the changed cells are read as those of a run sheet are. */
final class Correcting {
    private final ReadingDoor door;
    private final RunSheets sheets;

    Correcting(ReadingDoor door, RunSheets sheets) {
        this.door = door;
        this.sheets = sheets;
    }

    Kept correct(
            ResultDetail before,
            Map<String, String> changed,
            String reason,
            PersonId by,
            Optional<Passphrase> passphrase) {
        if (changed.isEmpty()) {
            throw new BadInput(Complaint.of("correct", LedgerWords.get("correct.nothing")));
        }
        Reading was = before.reading().reading();
        Map<String, String> cells = SheetCells.of(was);
        cells.putAll(changed);
        return door.correct(before.row().id(), merged(was, read(cells), changed), reason, by, passphrase);
    }

    private Reading read(Map<String, String> cells) {
        byte[] sheet = SheetCells.csv(cells).getBytes(StandardCharsets.UTF_8);
        Checked<List<Reading>> read = sheets.read("correct", new ByteArrayInputStream(sheet));
        if (read instanceof Checked.Bad<List<Reading>> bad) {
            throw new BadInput(
                    bad.complaints().stream().map(Correcting::byOption).toList());
        }
        return read.orRefuse().get(0);
    }

    /** A complaint about a cell, told of the option that filled it. */
    private static Complaint byOption(Complaint cell) {
        String option = cell.field().equals("reason") ? "why" : cell.field().replace('_', '-');
        return Complaint.of(option.isEmpty() ? cell.source() : "--" + option, cell.text());
    }

    /** Keeps what a sheet has no cell for. */
    private static Reading merged(Reading was, Reading now, Map<String, String> changed) {
        return new Reading(
                changed.containsKey("reason") ? now.sample() : reasonOf(was.sample(), now.sample()),
                now.method(),
                now.route(),
                now.lot(),
                now.operator(),
                was.observer(),
                now.times(),
                now.strip(),
                was.second(),
                was.preChecks(),
                was.origin());
    }

    private static Sample reasonOf(Sample was, Sample now) {
        return new Sample(
                now.code(),
                now.place(),
                now.line(),
                now.batch(),
                was.reason(),
                was.reasonText(),
                now.visual(),
                now.area(),
                now.dilution(),
                now.control());
    }
}
