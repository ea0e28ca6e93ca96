package wickbench.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;

/** Which samples are taken on a line, and what is in them. */
final class SamplePlan {
    private static final double LOW_POSITIVE = 0.45;
    private static final double LOW_POSITIVE_SPREAD = 0.15;
    private static final int AT_START_UP = 2;

    private final Plant plant;
    private final Map<MethodId, Method> methods;
    private final Span span;
    private final Residue residue;
    private final Codes codes;
    private final Chance chance;

    SamplePlan(Plant plant, Map<MethodId, Method> methods, Span span, Residue residue, Codes codes, Chance chance) {
        this.plant = plant;
        this.methods = methods;
        this.span = span;
        this.residue = residue;
        this.codes = codes;
        this.chance = chance;
    }

    /** Takes all points for the allergens that leave the line, then the first product. */
    List<Task> changeover(Plant.Line line, List<String> leaving, Instant when) {
        List<Task> tasks = new ArrayList<>();
        for (Method method : methodsFor(leaving)) {
            points(line, method).forEach(point -> tasks.add(cleaned(line, point, method, Reason.CHANGEOVER, 1, when)));
            if (line.firstOff().contains(method.ref().id())) {
                tasks.add(Task.firstOff(next(line, when), line.id() + " first off", method, residue.firstOff()));
            }
        }
        return withControls(line, tasks, when);
    }

    /** Takes a point for each leaving allergen of the still soiled line, to know the worst that cleaning meets. */
    List<Task> beforeCleaning(Plant.Line line, List<String> leaving, Instant when) {
        List<Task> tasks = new ArrayList<>();
        for (Method method : methodsFor(leaving)) {
            List<Plant.Point> points = points(line, method).toList();
            if (method.route() != Route.RINSE && !points.isEmpty()) {
                Task task = Task.sample(
                        next(line, when), chance.oneOf(points), method, Reason.BEFORE_CLEANING, residue.soiled(), 0);
                tasks.add(task.soiled());
            }
        }
        return withControls(line, tasks, when);
    }

    /** Takes two points for an allergen that the line knows but the product made has not; none when it has all. */
    List<Task> startUp(Plant.Line line, Plant.Product product, Instant when) {
        List<Method> absent = methods.values().stream()
                .filter(method -> !product.allergens().contains(allergen(method)))
                .filter(method -> points(line, method).findAny().isPresent())
                .toList();
        if (absent.isEmpty()) {
            return List.of();
        }
        Method method = chance.oneOf(absent);
        List<Plant.Point> points = points(line, method).toList();
        int first = chance.between(0, points.size() - 1);
        List<Task> tasks = IntStream.range(0, Math.min(AT_START_UP, points.size()))
                .mapToObj(i -> points.get((first + i) % points.size()))
                .map(point -> Task.sample(next(line, when), point, method, Reason.START_UP, residue.running(point), 1))
                .toList();
        return withControls(line, tasks, when);
    }

    /** Takes a point and its neighbours after it was cleaned once more. */
    List<Task> cleanedAgain(Plant.Line line, List<Task> positive, Instant when) {
        List<Task> tasks = new ArrayList<>();
        for (Method method : methods.values()) {
            List<Plant.Point> points = points(line, method).toList();
            for (int i = 0; i < points.size(); i++) {
                int at = i;
                positive.stream()
                        .filter(task ->
                                task.method().ref().id().equals(method.ref().id()))
                        .filter(task -> Math.abs(points.indexOf(task.point().orElseThrow()) - at) <= 1)
                        .mapToInt(Task::round)
                        .max()
                        .ifPresent(round -> tasks.add(
                                cleaned(line, points.get(at), method, Reason.AFTER_CLEANING, round + 1, when)));
            }
        }
        return withControls(line, tasks, when);
    }

    /** Puts a blank and a low positive before the first strip of each kit. */
    List<Task> withControls(Plant.Line line, List<Task> tasks, Instant when) {
        List<Task> all = new ArrayList<>();
        String kit = "";
        for (Task task : tasks) {
            if (!task.method().kit().equals(kit)) {
                kit = task.method().kit();
                Load low = new Load(LOW_POSITIVE + LOW_POSITIVE_SPREAD * chance.normal());
                all.add(Task.control(next(line, when), task.method(), RunControl.BLANK, Load.NONE));
                all.add(Task.control(next(line, when), task.method(), RunControl.LOW_POSITIVE, low));
            }
            all.add(task);
        }
        return all;
    }

    private Task cleaned(Plant.Line line, Plant.Point point, Method method, Reason reason, int round, Instant when) {
        Load load = residue.cleaned(point, plant.kitNamed(method.kit()), round, when);
        return Task.sample(next(line, when), point, method, reason, load, round);
    }

    private Stream<Plant.Point> points(Plant.Line line, Method method) {
        return line.points().stream()
                .filter(point -> point.methods().contains(method.ref().id()));
    }

    private List<Method> methodsFor(List<String> allergens) {
        return methods.values().stream()
                .filter(method -> allergens.contains(allergen(method)))
                .toList();
    }

    private String allergen(Method method) {
        return plant.kitNamed(method.kit()).allergen();
    }

    private String next(Plant.Line line, Instant when) {
        return codes.next(line, span.dayOf(when));
    }
}
