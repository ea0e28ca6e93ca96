package wickbench.plant.changeover;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.Product;

/**
 * What a change asks for, and why.
 *
 * @param leaving allergens that are in the first and not in the second; none asks for no allergen test
 * @param clean the one to be done, with how it stands; empty where none is asked for or none is meant for it
 * @param tests at the points that the risk assessment names, and the pool of those that are drawn
 * @param draw how many of the pool are to be drawn at random; 0 where the line draws none
 * @param faults why it must not be made, the gravest first; none when it may
 * @param disputed what it rests on that stations stated differently, by name
 * @param testMinutes how long one person takes for the tests
 * @param minutes clean and tests together, or what a plain change takes
 */
public record Changeover(
        String line,
        Product from,
        Product to,
        List<Leaving> leaving,
        Optional<Validation> clean,
        List<Probe> tests,
        int draw,
        List<Fault> faults,
        List<String> disputed,
        int testMinutes,
        int minutes) {
    public Changeover {
        leaving = List.copyOf(leaving);
        tests = List.copyOf(tests);
        faults = List.copyOf(faults);
        disputed = List.copyOf(disputed);
    }

    /** Tells whether it may be made at all. */
    public boolean allowed() {
        return faults.isEmpty();
    }

    /** Tells whether an allergen test is asked for. */
    public boolean tested() {
        return !leaving.isEmpty();
    }

    /** Returns what it takes in an order of the day; empty when it must not be made. */
    public Optional<BigDecimal> cost() {
        return allowed() ? Optional.of(BigDecimal.valueOf(minutes)) : Optional.empty();
    }

    /** Returns the codes of what leaves, in order. */
    public Set<String> allergens() {
        return leaving.stream().map(each -> each.held().allergen()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Returns what leaves and no issued method sees. */
    public List<Leaving> uncovered() {
        return leaving.stream().filter(each -> !each.covered()).toList();
    }
}
