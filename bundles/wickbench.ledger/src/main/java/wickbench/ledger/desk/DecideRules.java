package wickbench.ledger.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Deciding.Wish;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ProductState;

/** What speaks against a decision: small rules, each of which says no for itself. */
final class DecideRules {
    /** What is wanted, of which case, by whom. */
    record Asked(Case of, ResultDetail detail, Wish wish, PersonId by, Function<Asked, List<No>> sight) {

        Move move() {
            return wish.move();
        }

        /** Returns the product that is meant, as it stands; what no decision named before stands as the result has it. */
        List<Product> products() {
            if (wish.products().isEmpty()) {
                return of.products();
            }
            return wish.products().stream()
                    .distinct()
                    .map(name -> of.products().stream()
                            .filter(product -> product.name().equals(name))
                            .findFirst()
                            .orElse(new Product(name, of.first(), of.result().happened())))
                    .toList();
        }

        /** Tells whether nothing of the product is left to decide afterwards. */
        boolean ends() {
            Set<String> moved = products().stream().map(Product::name).collect(Collectors.toSet());
            return move().orders().isEmpty()
                    && products().stream()
                            .allMatch(product -> move().from(product.state())
                                    .filter(ProductState::ended)
                                    .isPresent())
                    && of.products().stream()
                            .filter(product -> !moved.contains(product.name()))
                            .allMatch(product -> product.state().ended());
        }
    }

    private static final List<Function<Asked, List<No>>> ALL = List.of(
            DecideRules::ownReading,
            DecideRules::asRecorded,
            DecideRules::clash,
            DecideRules::allowed,
            DecideRules::owedAlready,
            DecideRules::cause,
            DecideRules::owedOpen,
            DecideRules::inProduct,
            DecideRules::unseen);

    private DecideRules() {}

    static List<No> against(Asked asked) {
        List<No> reasons = new ArrayList<>();
        ALL.forEach(rule -> reasons.addAll(rule.apply(asked)));
        return reasons;
    }

    private static List<No> ownReading(Asked asked) {
        return no(Readers.of(asked.detail()).contains(asked.by()), "decide.own-reading", asked.by());
    }

    private static List<No> asRecorded(Asked asked) {
        return no(
                !asked.detail().asRecorded(),
                "decide.differs",
                asked.of().result().sample());
    }

    private static List<No> clash(Asked asked) {
        return no(asked.of().clash(), "decide.clash", asked.of().result().id());
    }

    private static List<No> allowed(Asked asked) {
        return asked.products().stream()
                .filter(product -> asked.move().from(product.state()).isEmpty())
                .map(product -> new No(
                        "decide.move",
                        ActsWords.get(
                                product.name().isEmpty() ? "decide.move" : "decide.move-of",
                                ActsWords.get("move." + asked.move().code()),
                                ActsWords.get("state." + product.state().code()),
                                product.name())))
                .toList();
    }

    private static List<No> owedAlready(Asked asked) {
        return asked.move()
                .orders()
                .filter(owed -> asked.of().owed().stream()
                        .anyMatch(item -> !item.done() && item.step().owed() == owed))
                .map(owed -> no(
                        true,
                        "decide.owed-already",
                        ActsWords.get("move." + asked.move().code())))
                .orElse(List.of());
    }

    /** The root cause is known before the last of the product is let go. */
    private static List<No> cause(Asked asked) {
        Optional<String> known = asked.wish().cause().or(asked.of()::cause);
        return no(asked.ends() && known.isEmpty(), "decide.no-cause");
    }

    private static List<No> owedOpen(Asked asked) {
        return asked.move() == Move.RELEASE
                ? asked.of().owed().stream()
                        .filter(item -> !item.done() && item.step() != Step.HOLD)
                        .map(DecideRules::open)
                        .toList()
                : List.of();
    }

    private static No open(OwedItem item) {
        return new No(
                "decide.owed-open",
                ActsWords.get(
                        "decide.owed-open", ActsWords.get("step." + item.step().code())));
    }

    /** Allergen found in the product itself is not decided away: another laboratory must not have found it. */
    private static List<No> inProduct(Asked asked) {
        boolean food = asked.of().result().route().food();
        boolean positive = asked.detail().history().stream()
                .anyMatch(each -> each.reading().verdict().outcome().positive());
        boolean cleared =
                !asked.of().outside().isEmpty() && asked.of().outside().stream().noneMatch(Outside::detected);
        return no(asked.move() == Move.RELEASE && food && positive && !cleared, "decide.in-product");
    }

    private static List<No> unseen(Asked asked) {
        return asked.move() == Move.RELEASE ? asked.sight().apply(asked) : List.of();
    }

    private static List<No> no(boolean against, String code, Object... values) {
        return against ? List.of(new No(code, ActsWords.get(code, values))) : List.of();
    }
}
