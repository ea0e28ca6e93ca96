package wickbench.training.round;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;
import wickbench.training.Agreement;
import wickbench.training.Call;
import wickbench.training.Compared;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.PassRule;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.RoundPlan;
import wickbench.training.Rounds;
import wickbench.training.Skill;
import wickbench.training.StripClass;
import wickbench.training.Truth;
import wickbench.training.book.Book;
import wickbench.training.book.Kinds;
import wickbench.training.book.Pen;
import wickbench.training.book.Said;
import wickbench.training.book.Told;

/** Holds blind rounds; the acts of one station follow one another. */
@Component
public final class RoundBook implements Rounds {
    private final Book book;
    private final Pen pen;
    private final Attachments attachments;

    @Activate
    public RoundBook(@Reference Book book, @Reference Pen pen, @Reference Attachments attachments) {
        this.book = book;
        this.pen = pen;
        this.attachments = attachments;
    }

    @Override
    public Operating operating(Design design, Skill poor, Skill good) {
        return Odds.of(design, poor, good);
    }

    @Override
    public PassRule suggested(Map<StripClass, Integer> strips, Skill poor) {
        return Odds.suggested(strips, poor);
    }

    @Override
    public List<Round> all() {
        Map<String, List<Told>> byRound = book.told("round is not null").stream()
                .collect(Collectors.groupingBy(
                        told -> told.fields().optionalText("round").orElse(""), TreeMap::new, Collectors.toList()));
        List<Told> seen = book.told("kind = ?", Kinds.SEEN);
        return byRound.values().stream()
                .flatMap(told -> RoundFold.of(Book.standing(told), seen, each -> pen.entry(each.entry())).stream())
                .sorted(java.util.Comparator.comparing(Round::opened).reversed().thenComparing(Round::id))
                .toList();
    }

    @Override
    public Optional<Round> find(String id) {
        List<Told> told = Book.standing(book.told("round = ?", id));
        return RoundFold.of(told, book.told("kind = ?", Kinds.SEEN), each -> pen.entry(each.entry()));
    }

    private Round known(String id) {
        return find(id).orElseThrow(() -> Said.wrong("round", "round.unknown", id));
    }

    @Override
    public synchronized Prepared open(RoundPlan plan, Actor by) {
        pen.asked(Act.KEEP_TRAINING, Kinds.OPENED, by);
        Planning.check(plan, by);
        Planning.checkPictures(plan, attachments);
        if (find(plan.id()).isPresent()) {
            throw Said.refused("round.taken", plan.id());
        }
        RoundKey key = new Sealing(pen.home().chance()).key(plan);
        List<String> codes = key.strips().stream().map(RoundKey.Sealed::code).toList();
        Vault vault = vault();
        vault.keep(key);
        try {
            pen.write(
                    Act.KEEP_TRAINING,
                    Kinds.OPENED,
                    RoundJson.opened(plan, book.now(), codes, photographs(plan, key), key.commitment()),
                    by);
        } catch (RuntimeException e) {
            vault.drop(plan.id());
            throw e;
        }
        return new Prepared(known(plan.id()), key);
    }

    private static Map<String, Hash> photographs(RoundPlan plan, RoundKey key) {
        Map<String, Hash> pictures = new TreeMap<>();
        key.strips()
                .forEach(strip -> plan.panel().stream()
                        .filter(each -> each.item().equals(strip.item()))
                        .findFirst()
                        .flatMap(each -> each.photograph())
                        .ifPresent(picture -> pictures.put(strip.code(), picture)));
        return pictures;
    }

    private Vault vault() {
        return new Vault(pen.home().folder());
    }

    @Override
    public synchronized Round call(String id, PersonId caller, List<Call> calls, Optional<String> sheet, Actor by) {
        Round round = known(id);
        if (round.state() != Round.State.OPEN) {
            throw Said.refused("round.closed", id);
        }
        if (!round.plan().callers().contains(caller)) {
            throw Said.refused("round.not-reader", caller, id);
        }
        Calling.check(round, caller, calls, book.now());
        Act act = by.who().equals(caller) ? Act.CALL_STRIPS : Act.KEEP_TRAINING;
        pen.write(act, Kinds.CALLED, CallJson.body(id, book.now(), caller, calls, sheet), by);
        return known(id);
    }

    @Override
    public synchronized Round close(String id, List<PersonId> without, Optional<String> reason, Actor by) {
        pen.asked(Act.KEEP_TRAINING, Kinds.CLOSED, by);
        Round round = known(id);
        if (round.state() != Round.State.OPEN) {
            throw Said.refused("round.closed", id);
        }
        Set<PersonId> missing = new HashSet<>(round.missing());
        missing.removeAll(without);
        if (!missing.isEmpty()) {
            throw Said.refused("round.key-early", id, names(missing));
        }
        Planning.checkLeftOut(round, without, reason);
        RoundKey key = vault().read(id).orElseThrow(() -> Said.refused("round.key-elsewhere", id));
        if (!key.commitment().equals(round.commitment())) {
            throw Said.refused("round.key-changed", id);
        }
        Instant now = book.now();
        pen.write(Act.KEEP_TRAINING, Kinds.CLOSED, RoundJson.closed(id, now, key, without, reason), by);
        vault().drop(id);
        return known(id);
    }

    private static String names(Set<PersonId> people) {
        return people.stream().sorted().map(PersonId::value).collect(Collectors.joining(", "));
    }

    @Override
    public synchronized Round score(String id, Actor by) {
        Round round = known(id);
        if (round.state() == Round.State.SCORED) {
            throw Said.refused("round.scored-already", id);
        }
        if (round.state() == Round.State.OPEN) {
            throw Said.refused("round.not-closed", id);
        }
        if (round.plan().callers().contains(by.who())) {
            throw Said.refused("round.own-calls", by.who(), id);
        }
        if (!round.keyHolds().orElse(false)) {
            throw Said.refused("round.key-changed", id);
        }
        Scoring scoring = Scoring.of(round);
        if (scoring.complete().isEmpty()) {
            throw Said.refused("round.nobody", id);
        }
        pen.write(
                Act.SCORE_ROUND,
                Kinds.SCORED,
                ScoreJson.body(id, book.now(), scoring.scores(), scoring.agreement()),
                by);
        return known(id);
    }

    @Override
    public Optional<Agreement> agreement(String id) {
        return find(id).filter(round -> round.key().isPresent())
                .map(round -> Scoring.of(round).agreement());
    }

    @Override
    public Map<String, Truth> truth(String id) {
        return find(id).filter(round -> round.key().isPresent())
                .map(round -> Keyed.of(round).strips())
                .orElse(Map.of());
    }

    @Override
    public Compared compare(PersonId reader, String first, String second) {
        return Scoring.compare(reader, scored(first, reader), scored(second, reader));
    }

    private Round scored(String id, PersonId reader) {
        Round round = known(id);
        if (round.scoreOf(reader).isEmpty()) {
            throw Said.refused("round.not-scored", reader, id);
        }
        return round;
    }
}
