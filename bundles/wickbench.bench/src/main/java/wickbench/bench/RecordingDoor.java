package wickbench.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Verdict;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.Judgement;
import wickbench.reading.RecordedReadingJson;
import wickbench.reading.Surroundings;

/** The one door by which readings become entries. */
@Component
public final class RecordingDoor implements ReadingDoor {
    private final Journal journal;
    private final Index index;
    private final MethodShelf shelf;
    private final Judging judging;
    private final Authority authority;

    @Activate
    public RecordingDoor(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference MethodShelf shelf,
            @Reference Neighbours neighbours,
            @Reference Authority authority) {
        this.authority = authority;
        this.journal = journal;
        this.index = index;
        this.shelf = shelf;
        this.judging = new Judging(neighbours, home.clock(), new ControlBook(home, index));
    }

    @Override
    public List<RecordedReading> judge(List<Reading> run) {
        return judging.judge(run, shelf, this::inForce);
    }

    @Override
    public synchronized List<Kept> record(List<Reading> run, PersonId by) {
        List<RecordedReading> judged = judge(run);
        List<UUID> ids = run.stream().map(ReadingId::of).toList();
        Set<UUID> fresh = fresh(ids);
        Set<UUID> toAdd = new HashSet<>(fresh);
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            if (toAdd.remove(ids.get(i))) {
                drafts.add(draft(ids.get(i), judged.get(i), by));
            }
        }
        Iterator<Entry> added = (drafts.isEmpty() ? List.<Entry>of() : journal.append(drafts)).iterator();
        return kept(judged, ids, fresh, added);
    }

    @Override
    public synchronized Kept correct(
            UUID corrects, Reading now, String reason, PersonId by, Optional<Passphrase> passphrase) {
        RecordedReading first = recorded(corrects);
        Verdict verdict = Judgement.judge(first.method(), now, Surroundings.of(first.answers()));
        if (index.read(BenchView.NAME, rows -> BenchView.everHeld(corrects, rows)) && !verdict.holds()) {
            throw new Refusal("reading.sign-stands", BenchWords.get("correct.sign-stands"));
        }
        RecordedReading anew = new RecordedReading(now, first.method(), first.answers(), verdict);
        CorrectedReading body = new CorrectedReading(corrects, reason, anew);
        Draft draft = authority.authorise(weight(first.reading(), by), correction(body, by), passphrase);
        Optional<EntryRef> before = index.find(draft.id());
        EntryRef ref =
                before.orElseGet(() -> journal.append(List.of(draft)).get(0).ref());
        return new Kept(ref, draft.id(), anew, before.isEmpty());
    }

    /** One's own reading may be corrected without a second person, but not without one's name under it. */
    private static Act weight(Reading first, PersonId by) {
        return first.operator().equals(by) ? Act.CORRECT_OWN_READING : Act.CORRECT_READING;
    }

    private static Draft correction(CorrectedReading body, PersonId by) {
        return new Draft(
                ReadingId.ofCorrection(body),
                by,
                CorrectedReading.KIND,
                CorrectedReading.VERSION,
                CorrectedReadingJson.write(body));
    }

    private Set<UUID> fresh(List<UUID> ids) {
        Set<UUID> fresh = new HashSet<>(ids);
        fresh.removeIf(id -> index.find(id).isPresent());
        return fresh;
    }

    private List<Kept> kept(List<RecordedReading> judged, List<UUID> ids, Set<UUID> fresh, Iterator<Entry> added) {
        List<Kept> kept = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            UUID id = ids.get(i);
            boolean isNew = fresh.remove(id);
            // a row that repeats an earlier one of the same sheet stands where that one was put
            EntryRef ref = isNew ? added.next().ref() : index.find(id).orElseThrow();
            kept.add(new Kept(ref, id, judged.get(i), isNew));
        }
        return kept;
    }

    private RecordedReading recorded(UUID id) {
        return index.find(id)
                .flatMap(journal::entry)
                .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                .map(entry -> RecordedReadingJson.read(entry.ref().toString(), entry.body())
                        .orRefuse())
                .orElseThrow(() -> new Refusal("reading.unknown", BenchWords.get("correct.unknown", id)));
    }

    private boolean inForce(Method method, Optional<Instant> start) {
        return start.flatMap(at -> shelf.inForce(method.ref().id(), at))
                .filter(found -> found.ref().equals(method.ref()))
                .isPresent();
    }

    private static Draft draft(UUID id, RecordedReading reading, PersonId by) {
        return new Draft(id, by, RecordedReading.KIND, RecordedReading.VERSION, RecordedReadingJson.write(reading));
    }
}
