package wickbench.bench.owed;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Neighbourhood;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Settled;
import wickbench.api.owed.Step;
import wickbench.api.owed.VisualCheck;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;

/** What is owed, folded anew whenever an entry has come that bears on it. */
@Component
public final class OwedDesk implements OwedWork {
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final KnownFacts facts = new KnownFacts();

    @Activate
    public OwedDesk(@Reference Journal journal, @Reference Index index, @Reference Authority authority) {
        this.journal = journal;
        this.index = index;
        this.authority = authority;
    }

    @Override
    public List<OwedItem> open() {
        return items().stream().filter(item -> !item.done()).toList();
    }

    @Override
    public List<OwedItem> of(UUID owes) {
        return items().stream()
                .filter(item -> item.owes().equals(owes) || item.doubts().contains(owes))
                .toList();
    }

    @Override
    public EntryRef cleaned(CleanDone clean, PersonId by) {
        return keep(draft(CleanDone.KIND, CleanDone.VERSION, OwedBodies.write(clean), by));
    }

    @Override
    public EntryRef looked(VisualCheck check, PersonId by) {
        return keep(draft(VisualCheck.KIND, VisualCheck.VERSION, OwedBodies.write(check), by));
    }

    @Override
    public EntryRef neighbours(UUID reading, List<String> points, PersonId by) {
        if (of(reading).stream().noneMatch(item -> item.step() == Step.RE_TEST)) {
            throw new Refusal("owed.unknown", OwedWords.get("owed.unknown", reading));
        }
        Json.Obj body = OwedBodies.write(new Neighbourhood(reading, points));
        // the same names may be the last word twice, with other ones between
        UUID id = Draft.contentId(
                Neighbourhood.KIND,
                body.with("size", journal.size(journal.stations().get(0))));
        return keep(new Draft(id, by, Neighbourhood.KIND, Neighbourhood.VERSION, body));
    }

    @Override
    public EntryRef settle(UUID owes, Owed owed, String reason, PersonId by, Optional<Passphrase> passphrase) {
        List<OwedItem> open = of(owes).stream()
                .filter(item -> !item.done() && item.step().owed() == owed)
                .toList();
        Json.Obj body = new Settled(owes, owed, reason, about(owes, open)).body();
        Draft draft = authority.authorise(Act.SETTLE_OWED, draft(Settled.KIND, Settled.VERSION, body, by), passphrase);
        if (open.isEmpty() && index.find(draft.id()).isEmpty()) {
            throw new Refusal("owed.unknown", OwedWords.get("owed.unknown", owes));
        }
        if (Stream.concat(Stream.of(owes), open.stream().map(OwedItem::owes))
                .flatMap(reading -> reader(reading).stream())
                .anyMatch(by::equals)) {
            throw new Refusal("owed.own-reading", OwedWords.get("owed.own-reading", by));
        }
        return keep(draft);
    }

    /** What a decision must name, so that it does not answer what was not known. */
    private static List<UUID> about(UUID owes, List<OwedItem> open) {
        return open.stream()
                .flatMap(item -> item.owes().equals(owes) ? item.doubts().stream() : Stream.of(item.owes()))
                .toList();
    }

    private Optional<PersonId> reader(UUID reading) {
        return index.read(
                OwedView.NAME,
                rows -> rows.first(
                                "SELECT operator FROM fact WHERE id = ?", row -> row.optionalText("operator"), reading)
                        .flatMap(operator -> operator)
                        .map(PersonId::new));
    }

    private synchronized List<OwedItem> items() {
        return index.read(OwedView.NAME, facts::items);
    }

    private EntryRef keep(Draft draft) {
        return index.find(draft.id())
                .orElseGet(() -> journal.append(List.of(draft)).get(0).ref());
    }

    private static Draft draft(String kind, int version, Json.Obj body, PersonId by) {
        return new Draft(Draft.contentId(kind, body), by, kind, version, body);
    }
}
