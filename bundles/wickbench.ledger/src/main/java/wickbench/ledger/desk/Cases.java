package wickbench.ledger.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.index.Index;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Decided;
import wickbench.ledger.acts.LastGood;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ProductState;
import wickbench.ledger.acts.Taken;

/** Puts together what is known of a result and follows its product from state to state. */
record Cases(Index index, Results results, Acts acts, OwedWork work) {

    Case of(ResultRow result) {
        List<OwedItem> owed = work.of(result.id()).stream()
                .filter(item -> item.owes().equals(result.id()))
                .toList();
        List<Taken> taken = acts.decisions(result.id());
        Optional<ResultRow> good = results.lastGood(result);
        boolean clash = index.clash(ActsView.CASE + result.id()).isPresent();
        ProductState first = first(result, owed);
        List<String> names = names(result, first, good.map(ResultRow::happened), owed, taken);
        return new Case(
                result,
                good.map(row -> new LastGood(row.id(), row.happened())),
                first,
                names.stream()
                        .map(name -> product(name, result, first, taken, clash))
                        .toList(),
                cause(taken),
                owed,
                taken,
                acts.outside(result.id()),
                clash);
    }

    /** A Positive holds until somebody decides; a mere sign of allergen until its repeat was read. */
    private ProductState first(ResultRow result, List<OwedItem> owed) {
        boolean repeated = result.outcome() == Outcome.INVALID
                && owed.stream()
                        .filter(item -> item.step() == Step.HOLD && item.done())
                        .flatMap(item -> item.answers().stream())
                        .anyMatch(answer -> results.find(answer).isPresent());
        return result.held() && !repeated ? ProductState.HELD : ProductState.FREE;
    }

    private List<String> names(
            ResultRow result, ProductState first, Optional<Instant> good, List<OwedItem> owed, List<Taken> taken) {
        Set<String> names = new LinkedHashSet<>(result.batch().stream().toList());
        if (first == ProductState.HELD) {
            result.line().ifPresent(line -> names.addAll(results.batches(line, good, cleared(owed))));
        }
        taken.forEach(each -> names.addAll(each.decided().products()));
        return names.isEmpty() ? List.of("") : new ArrayList<>(names);
    }

    /** Returns until when the line made product in question: its points were Negative again, or the hold was ended. */
    private Optional<Instant> cleared(List<OwedItem> owed) {
        return Stream.of(negativeAgain(owed), ended(owed))
                .flatMap(Optional::stream)
                .min(Instant::compareTo);
    }

    private Optional<Instant> ended(List<OwedItem> owed) {
        return owed.stream()
                .filter(item -> item.step() == Step.HOLD && item.done())
                .flatMap(item -> item.answers().stream())
                .flatMap(answer -> acts.written(answer).stream())
                .max(Instant::compareTo);
    }

    /** Returns when the new samples after the clean were Negative; empty while they are not. */
    private Optional<Instant> negativeAgain(List<OwedItem> owed) {
        return owed.stream()
                .filter(item -> item.step() == Step.RE_TEST && item.done())
                .flatMap(item -> item.answers().stream())
                .flatMap(answer -> results.find(answer).stream())
                .map(detail -> detail.row().happened())
                .max(Instant::compareTo);
    }

    private static Product product(
            String name, ResultRow result, ProductState first, List<Taken> taken, boolean clash) {
        ProductState state = first;
        Instant since = result.happened();
        for (Taken each : taken) {
            Decided decided = each.decided();
            boolean about =
                    decided.products().contains(name) || decided.products().isEmpty() && name.isEmpty();
            Optional<ProductState> next =
                    each.stands() && about ? decided.move().from(state) : Optional.empty();
            if (next.filter(other -> other != ProductState.FREE).isPresent() && next.get() != state) {
                state = next.get();
                since = each.entry().at();
            }
        }
        return new Product(name, clash && state != ProductState.FREE ? ProductState.HELD : state, since);
    }

    private static Optional<String> cause(List<Taken> taken) {
        return taken.stream()
                .filter(Taken::stands)
                .flatMap(each -> each.decided().cause().stream())
                .reduce((older, newer) -> newer);
    }

    /** Returns each result because of which something is open, with its case, the oldest first. */
    List<Case> open() {
        Map<UUID, ResultRow> rows = new LinkedHashMap<>();
        work.open().forEach(item -> find(item.owes(), rows));
        acts.decidedOn().forEach(id -> find(id, rows));
        return rows.values().stream()
                .map(this::of)
                .filter(Case::open)
                .sorted(java.util.Comparator.comparing(
                                (Case each) -> each.result().happened())
                        .thenComparing(each -> each.result().id()))
                .toList();
    }

    private void find(UUID id, Map<UUID, ResultRow> rows) {
        results.find(id).ifPresent(detail -> rows.putIfAbsent(detail.row().id(), detail.row()));
    }
}
