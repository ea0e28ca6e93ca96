package wickbench.ledger.services;

import java.util.Optional;
import java.util.UUID;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.ledger.Results;

/** Decides on results in doubt, through the one door by which anything owed is ended. */
record DoubtDecision(OwedWork work, Results results, Journal journal) {

    /**
     * Decides on a result, or on all that an entry put in doubt.
     *
     * @param id an entry, by its id or as STATION:NUMBER
     */
    EntryRef decide(String id, String reason, PersonId by, Optional<Passphrase> passphrase) {
        if (reason.isBlank()) {
            throw new BadInput(Complaint.of("--reason", LedgerWords.get("decide.reason")));
        }
        return work.settle(subject(id), Owed.DECIDE, reason.strip(), by, passphrase);
    }

    private UUID subject(String id) {
        try {
            return id.indexOf(':') >= 0 ? subject(EntryRef.parse(id)) : subject(UUID.fromString(id));
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("ID", LedgerWords.get("id.expected", id)));
        }
    }

    private UUID subject(UUID entry) {
        return results.find(entry).map(found -> found.row().id()).orElse(entry);
    }

    private UUID subject(EntryRef entry) {
        return results.find(entry)
                .map(found -> found.row().id())
                .or(() -> journal.entry(entry).map(Entry::id))
                .orElseThrow(() -> new BadInput(Complaint.of("ID", LedgerWords.get("decide.unknown", entry))));
    }
}
