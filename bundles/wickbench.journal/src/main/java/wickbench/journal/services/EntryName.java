package wickbench.journal.services;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.words.Words;

/** Finds the entry that people name by its place, {@code STATION:NUMBER}, or by its id. */
record EntryName(Journal journal, Words words) {

    EntryRef find(String name) {
        try {
            return name.contains(":") ? EntryRef.parse(name) : byId(UUID.fromString(name));
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("ID", words.get("proof.id", name)));
        }
    }

    private EntryRef byId(UUID id) {
        List<EntryRef> found = new ArrayList<>();
        for (StationId station : journal.stations()) {
            journal.read(station, 0, entry -> {
                if (entry.id().equals(id)) {
                    found.add(entry.ref());
                }
                return found.isEmpty();
            });
        }
        return found.stream()
                .findFirst()
                .orElseThrow(() -> new BadInput(Complaint.of("ID", words.get("proof.unknown", id))));
    }
}
