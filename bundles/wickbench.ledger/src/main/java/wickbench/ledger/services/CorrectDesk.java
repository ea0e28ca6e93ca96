package wickbench.ledger.services;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RunSheets;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.acts.Correcting;

/** Corrects a reading through the one door; the changed cells are read as those of a run sheet are. */
@Component
public final class CorrectDesk implements Correcting {
    private final Optional<Bench> bench;

    /** What a correction goes through. */
    private record Bench(ReadingDoor door, RunSheets sheets) {}

    @Activate
    public CorrectDesk(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<ReadingDoor> door,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<RunSheets> sheets) {
        bench = door.flatMap(found -> sheets.map(reader -> new Bench(found, reader)));
    }

    @Override
    public boolean present() {
        return bench.isPresent();
    }

    @Override
    public Map<String, String> said(ResultDetail result) {
        return SheetCells.of(result.reading().reading());
    }

    @Override
    public String seen(Strip strip) {
        return SheetCells.seen(strip);
    }

    @Override
    public Kept correct(
            ResultDetail before,
            Map<String, String> changed,
            String reason,
            PersonId by,
            Optional<Passphrase> passphrase) {
        Bench open = bench.orElseThrow(() -> new Refusal("ledger.no-bench", LedgerWords.get("correct.no-bench")));
        if (changed.isEmpty()) {
            throw new BadInput(Complaint.of("correct", LedgerWords.get("correct.nothing")));
        }
        Reading was = before.reading().reading();
        Map<String, String> cells = SheetCells.of(was);
        cells.putAll(changed);
        return open.door()
                .correct(before.row().id(), merged(was, read(cells, open.sheets()), changed), reason, by, passphrase);
    }

    private static Reading read(Map<String, String> cells, RunSheets sheets) {
        byte[] sheet = SheetCells.csv(cells).getBytes(StandardCharsets.UTF_8);
        Checked<List<Reading>> read = sheets.read("correct", new ByteArrayInputStream(sheet));
        if (read instanceof Checked.Bad<List<Reading>> bad) {
            // the cells were never a sheet, so its line means nothing to anybody
            throw new BadInput(bad.complaints().stream()
                    .map(cell -> Complaint.of("correct", cell.field(), cell.text()))
                    .toList());
        }
        return read.orRefuse().get(0);
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
