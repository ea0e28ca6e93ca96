package wickbench.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.journal.StationId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/** The invented plant, as {@code demo/plant.json} describes it. */
record Plant(
        String name,
        ZoneId zone,
        StationId station,
        List<LocalTime> shifts,
        List<Closed> closed,
        List<Product> products,
        List<Kit> kits,
        List<Line> lines,
        List<Worker> people) {

    /** Days of every year on which nothing runs, both ends included; may run over New Year. */
    record Closed(MonthDay from, MonthDay to) {
        boolean covers(LocalDate day) {
            MonthDay of = MonthDay.from(day);
            boolean started = !of.isBefore(from);
            boolean open = !of.isAfter(to);
            return from.isAfter(to) ? started || open : started && open;
        }
    }

    /** What is made, and the allergens in it. */
    record Product(String id, String name, List<String> allergens) {}

    /**
     * A kit and how its strips behave.
     *
     * @param lots how its lot numbers begin
     * @param lotWeeks how long a lot lasts
     * @param slope of its detection curve
     * @param hookLost load in tenfolds at which half of the hook lines are gone; empty without hook line
     * @param testLost load in tenfolds at which half of the test lines are gone although allergen abounds
     * @param invalidRate how often the control line stays away
     * @param damagedRate how often a line is smeared
     */
    record Kit(
            String id,
            String name,
            String allergen,
            String lots,
            int lotWeeks,
            double slope,
            Optional<Double> hookLost,
            Optional<Double> testLost,
            double invalidRate,
            double damagedRate) {}

    /**
     * A production line.
     *
     * @param procedure its cleaning procedure
     * @param week the products of a week, shift by shift from Monday on
     * @param firstOff methods for the first product after a changeover
     */
    record Line(
            String id, String name, String procedure, List<String> week, List<MethodId> firstOff, List<Point> points) {}

    /**
     * A sampling point.
     *
     * @param residue what a good cleaning leaves there, in tenfolds of the limit
     */
    record Point(String name, double residue, List<MethodId> methods) {}

    /** Someone who works there. */
    record Worker(PersonId id, String name, Set<Role> roles) {
        boolean operator() {
            return roles.contains(Role.OPERATOR);
        }
    }

    List<PersonId> operators() {
        return people.stream().filter(Worker::operator).map(Worker::id).toList();
    }

    /** Returns who issues methods and enrols people. */
    PersonId office() {
        return people.stream()
                .filter(worker -> worker.roles().contains(Role.ADMINISTRATOR))
                .map(Worker::id)
                .findFirst()
                .orElseThrow();
    }

    Product product(String id) {
        return products.stream()
                .filter(product -> product.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    Kit kitNamed(String name) {
        return kits.stream().filter(kit -> kit.name().equals(name)).findFirst().orElseThrow();
    }

    /** Returns the methods that the plant uses, each once, in the order in which it names them. */
    List<MethodId> methods() {
        List<MethodId> found = new ArrayList<>();
        for (Line line : lines) {
            line.points().forEach(point -> found.addAll(point.methods()));
            found.addAll(line.firstOff());
        }
        return found.stream().distinct().toList();
    }

    boolean works(LocalDate day) {
        return day.getDayOfWeek().getValue() <= daysAWeek() && closed.stream().noneMatch(time -> time.covers(day));
    }

    /** Returns what a line makes in a shift of a working day. */
    Product made(Line line, LocalDate day, int shift) {
        return product(line.week().get((day.getDayOfWeek().getValue() - 1) * shifts.size() + shift));
    }

    private int daysAWeek() {
        return lines.get(0).week().size() / shifts.size();
    }
}
