package wickbench.stock.room;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wickbench.figures.store.Reorder;
import wickbench.stock.Kit;
import wickbench.stock.Lot;
import wickbench.stock.LotState;
import wickbench.stock.Outlook;
import wickbench.stock.Outlook.Step;
import wickbench.stock.Outlook.Waste;

/** Runs the stock of a kit down day by day, first expired first. */
final class Outlooks {
    private static final int FARTHEST = 730;
    private static final int ORDER_DAYS = 28;

    private final double demand;
    private final double point;
    private final LocalDate today;
    private final List<Pile> piles;
    private final List<Step> steps = new ArrayList<>();
    private final List<Waste> waste = new ArrayList<>();
    private Optional<LocalDate> runsOut = Optional.empty();
    private Optional<LocalDate> orderBy = Optional.empty();

    /** What is left of a lot. */
    private static final class Pile {
        private final Lot lot;
        private double strips;

        Pile(Lot lot) {
            this.lot = lot;
            this.strips = lot.strips().left().doubleValue();
        }
    }

    private Outlooks(double demand, double point, LocalDate today, List<Pile> piles) {
        this.demand = demand;
        this.point = point;
        this.today = today;
        this.piles = piles;
    }

    static Outlook of(Kit kit, List<Lot> lots, Demand demand, LocalDate today) {
        List<Pile> piles = lots.stream()
                .filter(lot -> lot.kit().name().equals(kit.name()) && !lot.expired(today))
                .filter(lot -> lot.state() == LotState.FIT || lot.state() == LotState.AWAITING_CHECK)
                .sorted(Comparator.comparing(Lot::effective))
                .map(Pile::new)
                .toList();
        Reorder reorder = demand.reorder(kit.supply());
        Outlooks run = new Outlooks(demand.rate(), reorder.point(), today, piles);
        long strips = Math.round(run.left());
        run.runDown();
        return new Outlook(
                kit.name(),
                demand.rate(),
                demand.deviation(),
                demand.perDay().size(),
                strips,
                reorder.point(),
                reorder.safety(),
                demand.method(),
                run.runsOut,
                run.orderBy,
                run.boxes(kit),
                run.steps,
                run.waste);
    }

    private void runDown() {
        steps.add(new Step(today, left()));
        for (int i = 0; i < FARTHEST && runsOut.isEmpty(); i++) {
            day(today.plusDays(i));
        }
    }

    private void day(LocalDate day) {
        if (demand > 0 && orderBy.isEmpty() && left() <= point) {
            orderBy = Optional.of(day);
        }
        boolean last = demand > 0 && left() <= demand;
        use();
        if (last) {
            runsOut = Optional.of(day);
            steps.add(new Step(day, 0));
        } else if (piles.stream()
                .anyMatch(pile -> pile.strips > 0 && pile.lot.effective().equals(day))) {
            steps.add(new Step(day, left()));
            expire(day);
            steps.add(new Step(day, left()));
            runsOut = left() > 0 ? runsOut : Optional.of(day.plusDays(1));
        }
    }

    private void use() {
        double needed = demand;
        for (Pile pile : piles) {
            double taken = Math.min(needed, pile.strips);
            pile.strips -= taken;
            needed -= taken;
        }
    }

    private void expire(LocalDate day) {
        piles.stream().filter(pile -> pile.lot.effective().equals(day)).forEach(pile -> {
            long unused = Math.round(pile.strips);
            if (unused > 0) {
                waste.add(new Waste(pile.lot.id().value(), day, unused));
            }
            pile.strips = 0;
        });
    }

    private double left() {
        return piles.stream().mapToDouble(pile -> pile.strips).sum();
    }

    /** Returns whole boxes for four weeks beyond the point at which to order. */
    private long boxes(Kit kit) {
        return orderBy.isEmpty() ? 0 : Math.max(1, (long) Math.ceil((ORDER_DAYS * demand) / kit.stripsInBox()));
    }
}
