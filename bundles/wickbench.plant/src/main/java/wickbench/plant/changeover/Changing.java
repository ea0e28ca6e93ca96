package wickbench.plant.changeover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.figures.sampling.SampleSize;
import wickbench.figures.sampling.ZeroFailure;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Product;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;

/** Works out what changes on one line ask for. */
public final class Changing {
    private final Line line;
    private final List<Point> points;
    private final List<Validation> cleans;
    private final Map<MethodId, Method> methods;
    private final Covering covering;
    private final TestTime time;
    private final Disputes disputes;

    /**
     * @param points of the line
     * @param cleans of the line, with how each stands
     * @param methods in force
     */
    public Changing(
            Line line,
            List<Point> points,
            List<Validation> cleans,
            List<Method> methods,
            TestTime time,
            Disputes disputes) {
        this.line = line;
        this.points = List.copyOf(points);
        this.cleans = List.copyOf(cleans);
        this.methods =
                methods.stream().collect(Collectors.toMap(method -> method.ref().id(), Function.identity()));
        this.covering = new Covering(methods);
        this.time = time;
        this.disputes = disputes;
    }

    /** Returns what the change from one product to another asks for. */
    public Changeover of(Product from, Product to) {
        Set<Fault> faults = new TreeSet<>();
        if (!from.stated() || !to.stated()) {
            faults.add(Fault.NOT_STATED);
        }
        List<Contained> gone = from.holds().orElse(List.of()).stream()
                .filter(held -> to.stated() && !to.allergens().contains(held.allergen()))
                .toList();
        List<Probe> tests = tests(gone, to);
        List<Leaving> leaving = gone.stream().map(held -> leaving(held, tests)).toList();
        leaving.forEach(each -> faults.addAll(faults(each)));
        Set<String> codes = gone.stream().map(Contained::allergen).collect(Collectors.toSet());
        Optional<Validation> clean = gone.isEmpty() ? Optional.empty() : clean(codes);
        List<String> disputed = disputed(from, to, clean);
        if (!disputed.isEmpty()) {
            faults.add(Fault.DISPUTED);
        }
        if (!gone.isEmpty()) {
            faults.addAll(faults(clean, codes));
        }
        int draw = draw(tests);
        int testing = time.minutes(taken(tests, draw).stream()
                .map(test -> methods.get(test.method().id()).timing())
                .toList());
        int cleaning = clean.map(each -> each.clean().minutes()).orElse(0);
        return new Changeover(
                line.id(),
                from,
                to,
                leaving,
                clean,
                tests,
                draw,
                List.copyOf(faults),
                disputed,
                testing,
                gone.isEmpty() ? line.changeMinutes() : cleaning + testing);
    }

    /** Tells whether stations stated a product differently. */
    boolean disputed(Product product) {
        return disputes.on("product", product.id());
    }

    private List<String> disputed(Product from, Product to, Optional<Validation> clean) {
        List<String> names = new ArrayList<>();
        if (disputes.on("line", line.id())) {
            names.add(line.id());
        }
        Stream.of(from, to).filter(this::disputed).map(Product::name).distinct().forEach(names::add);
        points.stream()
                .map(Point::name)
                .filter(point -> disputes.on("point", point))
                .forEach(names::add);
        clean.map(each -> each.clean().id()).filter(disputes::onClean).ifPresent(names::add);
        return names;
    }

    private Leaving leaving(Contained held, List<Probe> tests) {
        List<Way> ways = covering.ways(held);
        boolean tested = ways.stream()
                .filter(Way::sees)
                .anyMatch(way -> tests.stream().anyMatch(test -> test.method().equals(way.method())));
        return new Leaving(held, ways, tested);
    }

    private static Set<Fault> faults(Leaving each) {
        if (!each.covered()) {
            return Set.of(Fault.UNCOVERED);
        }
        return each.tested() ? Set.of() : Set.of(Fault.NO_POINT);
    }

    private static Set<Fault> faults(Optional<Validation> clean, Set<String> codes) {
        if (clean.isEmpty()) {
            return Set.of(Fault.NO_CLEAN);
        }
        return clean.get().covers(codes) ? Set.of() : Set.of(Fault.NOT_VALIDATED);
    }

    /** One that was shown to work goes before one that was not, then the shorter. */
    private Optional<Validation> clean(Set<String> codes) {
        return cleans.stream()
                .filter(each -> each.clean().isFor(codes))
                .min(Comparator.comparing((Validation each) -> !each.covers(codes))
                        .thenComparing(each -> each.clean().minutes())
                        .thenComparing(each -> each.clean().id()));
    }

    private List<Probe> tests(List<Contained> gone, Product to) {
        List<Probe> tests = new ArrayList<>();
        for (Point point : points) {
            Map<MethodId, Set<String>> byMethod = new java.util.LinkedHashMap<>();
            gone.forEach(held -> first(point, held, to)
                    .ifPresent(method -> byMethod.computeIfAbsent(method.ref().id(), id -> new TreeSet<>())
                            .add(held.allergen())));
            byMethod.forEach((id, allergens) -> tests.add(new Probe(
                    point.name(), methods.get(id).ref(), methods.get(id).route(), allergens, point.drawn())));
        }
        return tests;
    }

    /** Returns the first of a point's methods that sees an allergen; none in food that answers the same strip itself. */
    private Optional<Method> first(Point point, Contained held, Product to) {
        List<Way> ways = covering.ways(held).stream().filter(Way::sees).toList();
        return point.methods().stream()
                .flatMap(id -> Optional.ofNullable(methods.get(id)).stream())
                .filter(method -> ways.stream().anyMatch(way -> way.method().equals(method.ref())))
                .filter(method -> !method.route().food()
                        || to.allergens().stream().noneMatch(code -> Covering.answers(method, code)))
                .findFirst();
    }

    /** How many places of the pool are drawn; the whole pool where no smaller number is enough. */
    private int draw(List<Probe> tests) {
        int pool = (int)
                tests.stream().filter(Probe::drawn).map(Probe::place).distinct().count();
        if (pool == 0 || line.random().isEmpty()) {
            return 0;
        }
        Line.Random random = line.random().get();
        SampleSize size = ZeroFailure.perfect(
                        random.share().doubleValue(), random.confidence().doubleValue())
                .lot(pool);
        return size instanceof SampleSize.Enough enough ? Math.min(pool, enough.n()) : pool;
    }

    /** The tests that will be made, where of the pool any places are drawn: the first stand for them. */
    private static List<Probe> taken(List<Probe> tests, int draw) {
        List<String> pool = tests.stream()
                .filter(Probe::drawn)
                .map(Probe::place)
                .distinct()
                .limit(draw)
                .toList();
        return tests.stream()
                .filter(test -> !test.drawn() || pool.contains(test.place()))
                .toList();
    }
}
