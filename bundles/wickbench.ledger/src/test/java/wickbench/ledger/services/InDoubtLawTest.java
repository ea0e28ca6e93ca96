package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.method.Seen;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Settled;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.bench.BenchView;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Sort;
import wickbench.ledger.services.Strips.Plain;

/** The ledger asks of a table what the list of what is owed folds; both name the same results, whatever happens. */
class InDoubtLawTest {
    private static final Instant BEGIN = Instant.parse("2026-03-01T08:00:00Z");

    private final List<UUID> results = new ArrayList<>();
    private final List<UUID> doubts = new ArrayList<>();

    @Property(tries = 20)
    void the_ledger_and_what_is_owed_agree(@ForAll long seed) throws IOException {
        results.clear();
        doubts.clear();
        Random chance = new Random(seed);
        try (TestSite site = new TestSite(
                Files.createTempDirectory("wickbench-ledger"), new LedgerView(), new BenchView(), new OwedView())) {
            OwedDesk owed = new OwedDesk(site.journal, site.index, (act, draft, passphrase) -> draft);
            for (int act = 0; act < 40; act++) {
                site.journal.append(List.of(next(site, chance)));
            }
            assertThat(inLedger(site)).isEqualTo(owed(owed));
        }
    }

    private Draft next(TestSite site, Random chance) {
        return switch (chance.nextInt(8)) {
            case 0 -> doubt(site, chance);
            case 1 -> trust(site, chance);
            case 2 -> decide(site, chance);
            default -> strip(site, chance);
        };
    }

    private Draft strip(TestSite site, Random chance) {
        Plain plain = Plain.negative("S-" + results.size());
        Draft draft = site.recorded(new Plain(
                        plain.sample(),
                        plain.place(),
                        plain.line(),
                        plain.batch(),
                        method(chance),
                        lot(chance),
                        operator(chance),
                        Optional.of(time(chance)),
                        chance.nextInt(4) == 0 ? Seen.SEEN : Seen.NOT_SEEN,
                        Seen.SEEN)
                .judged());
        results.add(draft.id());
        return draft;
    }

    private Draft doubt(TestSite site, Random chance) {
        Optional<LotId> lot = perhaps(chance, new LotId(lot(chance)));
        Optional<MethodId> method = perhaps(chance, new MethodId(method(chance)));
        Optional<PersonId> operator =
                lot.isEmpty() && method.isEmpty() ? Optional.of(operator(chance)) : perhaps(chance, operator(chance));
        Doubt doubt =
                new Doubt("some", lot, method, operator, perhaps(chance, time(chance)), perhaps(chance, time(chance)));
        Draft draft = draft(site, "some.kind", Doubt.into(Json.object(), List.of(doubt)));
        doubts.add(draft.id());
        return draft;
    }

    private Draft trust(TestSite site, Random chance) {
        return draft(site, "other.kind", new Trust(some(doubts, chance), time(chance)).into(Json.object()));
    }

    private Draft decide(TestSite site, Random chance) {
        if (results.isEmpty() || doubts.isEmpty()) {
            return strip(site, chance);
        }
        Settled settled = chance.nextBoolean()
                ? new Settled(any(results, chance), Owed.DECIDE, "looked at", some(doubts, chance))
                : new Settled(any(doubts, chance), Owed.DECIDE, "looked at", some(results, chance));
        return draft(site, Settled.KIND, settled.body());
    }

    private static Draft draft(TestSite site, String kind, Json.Obj body) {
        return new Draft(Draft.randomId(site.home.chance()), TestSite.WRITER, kind, 1, body);
    }

    private static <T> Optional<T> perhaps(Random chance, T value) {
        return chance.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private static <T> T any(List<T> all, Random chance) {
        return all.get(chance.nextInt(all.size()));
    }

    private static <T> List<T> some(List<T> all, Random chance) {
        return all.stream().filter(each -> chance.nextBoolean()).toList();
    }

    private static String lot(Random chance) {
        return "A" + (17 + chance.nextInt(2));
    }

    private static String method(Random chance) {
        return chance.nextBoolean() ? "hazelnut-rinse" : "milk-rinse";
    }

    private static PersonId operator(Random chance) {
        return new PersonId("op-0" + chance.nextInt(2));
    }

    private static Instant time(Random chance) {
        return BEGIN.plus(Duration.ofHours(chance.nextInt(6)));
    }

    private static Set<UUID> inLedger(TestSite site) {
        return site.results.page(Filter.ALL.onlyInDoubt(true), Sort.NEWEST_FIRST, Optional.empty(), 100).rows().stream()
                .map(ResultRow::id)
                .collect(Collectors.toSet());
    }

    private static Set<UUID> owed(OwedDesk owed) {
        return owed.open().stream()
                .filter(item -> item.step() == Step.DECIDE)
                .map(OwedItem::owes)
                .collect(Collectors.toSet());
    }
}
