package wickbench.bench.owed;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.api.words.Coded;
import wickbench.reading.owed.Fact.Spot;
import wickbench.reading.owed.Fact.Tested;

/** Readings and their corrections as rows. */
final class TestedRow {
    static final String KIND = "tested";

    private static final String INSERT =
            "INSERT INTO fact (id, kind, at, written, station, seq, target, place, line, sample, method, lot,"
                    + " dilution, control, reason, outcome, sign, owed, operator) VALUES"
                    + " (?, '" + KIND + "', ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private TestedRow() {}

    static void insert(Entry entry, UUID result, RecordedReading recorded, Rows rows) {
        Reading reading = recorded.reading();
        Sample sample = reading.sample();
        rows.write(
                INSERT,
                entry.id(),
                happened(reading.times(), entry),
                entry.at(),
                entry.ref().station().value(),
                entry.ref().seq(),
                result,
                sample.place(),
                sample.line(),
                sample.code(),
                reading.method().value(),
                reading.lot().value(),
                sample.dilution(),
                sample.control().map(Coded::code),
                sample.reason().map(Coded::code),
                recorded.verdict().outcome().code(),
                recorded.verdict().sign(),
                recorded.verdict().owed().stream().map(Coded::code).sorted().collect(Collectors.joining(" ")),
                reading.operator().value());
    }

    /** Returns the statement that a row holds, under the id of the reading that it is about. */
    static Tested read(Row row) {
        return new Tested(
                row.uuid("target"),
                row.instant("at"),
                row.text("sample"),
                new Spot(row.text("place"), row.optionalText("line")),
                new MethodId(row.text("method")),
                new LotId(row.text("lot")),
                new PersonId(row.text("operator")),
                dilution(row.decimal("dilution")),
                row.optionalText("control").map(code -> Coded.of(RunControl.class, code)),
                row.optionalText("reason").map(code -> Coded.of(Reason.class, code)),
                Coded.of(Outcome.class, row.text("outcome")),
                row.flag("sign"),
                owed(row.text("owed")));
    }

    private static BigDecimal dilution(BigDecimal kept) {
        return kept.signum() == 0 ? kept : kept.stripTrailingZeros();
    }

    private static Set<Owed> owed(String codes) {
        return Arrays.stream(codes.split(" "))
                .filter(code -> !code.isEmpty())
                .map(code -> Coded.of(Owed.class, code))
                .collect(Collectors.toSet());
    }

    /** The start decides what came after what; failing that the reading, failing that the writing. */
    private static Instant happened(Times times, Entry entry) {
        return Optional.<Instant>empty().or(times::started).or(times::read).orElse(entry.at());
    }
}
