package wickbench.stock.room;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.Route;
import wickbench.stock.Balance;
import wickbench.stock.Kit;
import wickbench.stock.Part;

/** What is left of a lot: what came since the last count and what was counted then, less what was used and taken. */
final class Shelf {
    private final Kit kit;
    private final List<Told> told;
    private final Uses uses;
    private final Instant at;

    /**
     * @param told what was told of the lot up to {@code at}, in order
     */
    Shelf(Kit kit, List<Told> told, Uses uses, Instant at) {
        this.kit = kit;
        this.told = told;
        this.uses = uses;
        this.at = at;
    }

    /** A count of one part: where in the order, when, and how much. */
    private record Base(int after, Instant since, BigDecimal amount, int pouches) {
        static final Base NOTHING = new Base(-1, Instant.EPOCH, BigDecimal.ZERO, 0);
    }

    /** What is there, and how the strips lie in pouches. */
    record Left(List<Balance> parts, long unrecordedPouches, Optional<Instant> pouch) {}

    Left left() {
        List<Balance> parts = new ArrayList<>();
        Base base = base(kit.strip());
        BigDecimal each = kit.strip().perPouch();
        BigDecimal strips = amount(kit.strip(), base);
        long sealed = Math.max(0, base.pouches() + delivered(base.after()) * kit.pouches() - opened(base.after()));
        BigDecimal there = strips.max(BigDecimal.ZERO);
        BigDecimal loose = there.subtract(each.multiply(BigDecimal.valueOf(sealed)));
        long unrecorded = loose.signum() < 0
                ? loose.negate().divide(each, 0, RoundingMode.CEILING).longValueExact()
                : 0;
        BigDecimal inPouches = each.multiply(BigDecimal.valueOf(sealed - unrecorded));
        BigDecimal open = there.subtract(inPouches);
        parts.add(new Balance(kit.strip(), inPouches, open, missing(strips)));
        kit.parts().stream().filter(part -> !part.strip()).map(this::balance).forEach(parts::add);
        return new Left(parts, unrecorded, unrecorded > 0 ? Optional.empty() : pouch(open, each));
    }

    private Balance balance(Part part) {
        BigDecimal amount = amount(part, base(part));
        return new Balance(part, amount.max(BigDecimal.ZERO), BigDecimal.ZERO, missing(amount));
    }

    private static BigDecimal missing(BigDecimal amount) {
        return amount.negate().max(BigDecimal.ZERO);
    }

    private BigDecimal amount(Part part, Base base) {
        BigDecimal came = part.inBox(kit.pouches()).multiply(BigDecimal.valueOf(delivered(base.after())));
        return base.amount()
                .add(came)
                .subtract(taken(part, base.after()))
                .subtract(part.perTest().multiply(BigDecimal.valueOf(tests(part, base))));
    }

    private long tests(Part part, Base base) {
        Map<Route, Long> read = uses.between(base.since(), at);
        return read.entrySet().stream()
                .filter(each -> part.taken(each.getKey()))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    private Base base(Part part) {
        for (int i = told.size() - 1; i >= 0; i--) {
            if (told.get(i).event() instanceof LotEvent.Counted counted) {
                Optional<BigDecimal> amount = counted(part, counted);
                if (amount.isPresent()) {
                    return new Base(i, counted.at(), amount.get(), counted.pouches());
                }
            }
        }
        return Base.NOTHING;
    }

    private static Optional<BigDecimal> counted(Part part, LotEvent.Counted counted) {
        return part.strip()
                ? Optional.of(part.perPouch()
                        .multiply(BigDecimal.valueOf(counted.pouches()))
                        .add(BigDecimal.valueOf(counted.loose())))
                : Optional.ofNullable(counted.others().get(part.name()));
    }

    private long delivered(int after) {
        return after(after, LotEvent.Received.class).stream()
                .mapToLong(LotEvent.Received::boxes)
                .sum();
    }

    private long opened(int after) {
        return after(after, LotEvent.Opened.class).size();
    }

    private BigDecimal taken(Part part, int after) {
        return after(after, LotEvent.Taken.class).stream()
                .filter(each -> each.part().equals(part.name()))
                .map(LotEvent.Taken::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Strips are taken from the pouch opened first, so what is open lies in the pouches opened last. */
    private Optional<Instant> pouch(BigDecimal open, BigDecimal each) {
        int pouches = open.divide(each, 0, RoundingMode.CEILING).intValueExact();
        List<Instant> openings = after(-1, LotEvent.Opened.class).stream()
                .map(LotEvent.Opened::at)
                .sorted(Comparator.naturalOrder())
                .toList();
        return pouches == 0 || pouches > openings.size()
                ? Optional.empty()
                : Optional.of(openings.get(openings.size() - pouches));
    }

    private <E extends LotEvent> List<E> after(int place, Class<E> type) {
        return told.stream()
                .skip(place + 1L)
                .map(Told::event)
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }
}
