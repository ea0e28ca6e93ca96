package wickbench.report.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;
import wickbench.report.ReportWords;

/** Finds a result in the journal itself, so that it prints on every site. Reads all entries once or twice. */
record ResultSearch(Journal journal) {

    /**
     * Gathers what the journal holds of a result.
     *
     * @param id an entry's id, or {@code STATION:NUMBER}; a correction stands for the result that it corrects
     * @throws BadInput when there is no such reading
     */
    ResultFile find(String id) {
        Entry named = id.indexOf(':') > 0 ? byRef(id) : byId(uuid(id));
        UUID result = named.is(CorrectedReading.KIND, CorrectedReading.VERSION)
                ? corrected(named).corrects()
                : named.id();
        return gather(id, result);
    }

    private ResultFile gather(String id, UUID result) {
        List<Statement> statements = new ArrayList<>();
        List<Entry> others = new ArrayList<>();
        each(entry -> {
            if (entry.id().equals(result) && entry.kind().equals(RecordedReading.KIND)) {
                statements.add(new Statement(entry, recorded(entry), Optional.empty()));
            } else if (names(entry.body(), result.toString())) {
                if (entry.kind().equals(CorrectedReading.KIND)) {
                    CorrectedReading correction = corrected(entry);
                    statements.add(new Statement(entry, correction.now(), Optional.of(correction.reason())));
                } else {
                    others.add(entry);
                }
            }
        });
        if (statements.isEmpty()) {
            throw unknown(id);
        }
        return new ResultFile(statements, others);
    }

    private Entry byRef(String ref) {
        try {
            return journal.entry(EntryRef.parse(ref)).orElseThrow(() -> unknown(ref));
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("ID", e.getMessage()));
        }
    }

    private Entry byId(UUID id) {
        List<Entry> found = new ArrayList<>();
        each(entry -> {
            if (entry.id().equals(id)) {
                found.add(entry);
            }
        });
        return found.stream().findFirst().orElseThrow(() -> unknown(id.toString()));
    }

    private void each(Consumer<Entry> reader) {
        for (StationId station : journal.stations()) {
            journal.read(station, 0, entry -> {
                reader.accept(entry);
                return true;
            });
        }
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("ID", ReportWords.get("result.id", text)));
        }
    }

    private static RecordedReading recorded(Entry entry) {
        understood(entry, RecordedReading.VERSION);
        return whole(RecordedReadingJson.read(entry.ref().toString(), entry.body()));
    }

    private static CorrectedReading corrected(Entry entry) {
        understood(entry, CorrectedReading.VERSION);
        return whole(CorrectedReadingJson.read(entry.ref().toString(), entry.body()));
    }

    private static void understood(Entry entry, int version) {
        if (entry.v() != version) {
            throw new Refusal(
                    "report.newer-version",
                    ReportWords.get("result.newer", entry.ref(), entry.kind(), entry.v(), version));
        }
    }

    private static <T> T whole(Checked<T> read) {
        if (read instanceof Checked.Good<T> good) {
            return good.value();
        }
        throw new Refusal("report.unreadable", read.complaints().get(0).oneLine());
    }

    private static boolean names(Json value, String id) {
        if (value instanceof Json.Obj object) {
            return object.members().values().stream().anyMatch(member -> names(member, id));
        }
        if (value instanceof Json.Arr array) {
            return array.items().stream().anyMatch(item -> names(item, id));
        }
        return value instanceof Json.Text text && text.value().equals(id);
    }

    private static BadInput unknown(String id) {
        return new BadInput(Complaint.of("ID", ReportWords.get("result.unknown", id)));
    }
}
