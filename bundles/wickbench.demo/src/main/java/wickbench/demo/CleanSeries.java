package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;

/** How a line's clean is shown to work after its worst product: three cleans in a row, each with all points Negative. */
final class CleanSeries {
    private static final int PASSES = 3;

    /** From the end of a product to that of the clean after it. */
    private static final Duration CLEANED = Duration.ofMinutes(90);

    private final String clean;
    private final Plant.Product worst;
    private final List<String> allergens;
    private final List<Sampled> points;
    private int passes;
    private int runs;

    private record Sampled(String place, MethodId method) {}

    private CleanSeries(String clean, Plant.Product worst, List<String> allergens, List<Sampled> points) {
        this.clean = clean;
        this.worst = worst;
        this.allergens = allergens;
        this.points = points;
    }

    /** Takes of a line the product with the most allergens, and every point that is sampled for them. */
    static CleanSeries of(Plant plant, Plant.Line line) {
        List<Plant.Product> made =
                line.week().stream().distinct().map(plant::product).toList();
        Plant.Product worst = made.stream()
                .max(Comparator.comparing((Plant.Product product) ->
                                sampled(line, product).size())
                        .thenComparing(plant.products()::indexOf))
                .orElseThrow();
        TreeSet<String> all = new TreeSet<>();
        made.forEach(product -> all.addAll(product.allergens()));
        return new CleanSeries(line.procedure(), worst, List.copyOf(all), sampled(line, worst));
    }

    private static List<Sampled> sampled(Plant.Line line, Plant.Product product) {
        List<Sampled> points = new ArrayList<>();
        for (Plant.Point point : line.points()) {
            point.methods().stream()
                    .filter(method -> product.allergens().stream()
                            .anyMatch(allergen -> method.value().startsWith(allergen)))
                    .forEach(method -> points.add(new Sampled(point.name(), method)));
        }
        return points;
    }

    boolean confirmed() {
        return passes >= PASSES;
    }

    int runs() {
        return runs;
    }

    /** A change after the worst product that leaves everything it holds. */
    boolean isFor(Plant.Product from, Plant.Product to) {
        return from.equals(worst) && to.allergens().stream().noneMatch(from.allergens()::contains);
    }

    Json.Obj opened() {
        return Json.object()
                .with("clean", clean)
                .with("product", worst.id())
                .with("reasons", Json.texts(List.of("hardest-soil", "highest-share")))
                .with("allergens", Json.texts(allergens))
                .with(
                        "points",
                        Json.array(points.stream()
                                .map(point -> (Json) Json.object()
                                        .with("place", point.place())
                                        .with("method", point.method().value()))
                                .toList()));
    }

    Json.Obj ran(Instant changed, List<PlantWeeks.Read> read) {
        Instant cleaned = changed.plus(CLEANED);
        List<PlantWeeks.Read> after = read.stream()
                .filter(each -> !each.started().isBefore(cleaned))
                .filter(each -> points.contains(new Sampled(each.place(), each.method())))
                .toList();
        boolean passed = points.stream().allMatch(point -> negative(after, point));
        passes = passed ? passes + 1 : 0;
        runs++;
        return Json.object()
                .with("clean", clean)
                .with("visual", "clean")
                .with(
                        "readings",
                        Json.texts(after.stream()
                                .map(each -> each.entry().toString())
                                .toList()))
                .with("at", StockEntries.time(cleaned));
    }

    /** An Invalid proves nothing; of the valid strips of a point each must be Negative. */
    private static boolean negative(List<PlantWeeks.Read> read, Sampled point) {
        List<PlantWeeks.Read> valid = read.stream()
                .filter(each -> point.equals(new Sampled(each.place(), each.method())) && !each.invalid())
                .toList();
        return !valid.isEmpty() && valid.stream().allMatch(PlantWeeks.Read::negative);
    }

    Json.Obj confirmation(LocalDate day) {
        return Json.object()
                .with("clean", clean)
                .with("until", day.plusYears(1).toString())
                .with(
                        "reason",
                        "Three cleans in a row after " + worst.name() + ", every point of the series Negative.");
    }
}
