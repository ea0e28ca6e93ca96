package wickbench.plant;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.json.Json;
import wickbench.plant.clean.Clean;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;

/** Things stated together, as a file of the plant holds them. */
public record Stated(
        List<Line> lines, List<Point> points, List<Product> products, List<Clean> cleans, List<Rule> rules) {
    public Stated {
        lines = List.copyOf(lines);
        points = List.copyOf(points);
        products = List.copyOf(products);
        cleans = List.copyOf(cleans);
        rules = List.copyOf(rules);
    }

    /** One thing as an entry says it. */
    public record Said(Thing what, String id, String kind, Json.Obj body) {}

    public static Stated of(Line line) {
        return new Stated(List.of(line), List.of(), List.of(), List.of(), List.of());
    }

    public static Stated of(Point point) {
        return new Stated(List.of(), List.of(point), List.of(), List.of(), List.of());
    }

    public static Stated of(Product product) {
        return new Stated(List.of(), List.of(), List.of(product), List.of(), List.of());
    }

    public static Stated of(Clean clean) {
        return new Stated(List.of(), List.of(), List.of(), List.of(clean), List.of());
    }

    public static Stated of(Rule rule) {
        return new Stated(List.of(), List.of(), List.of(), List.of(), List.of(rule));
    }

    /** Returns all, what others rest on first. */
    public List<Said> all() {
        List<Said> all = new ArrayList<>();
        lines.forEach(line -> all.add(new Said(Thing.LINE, line.id(), Line.KIND, line.body())));
        points.forEach(point -> all.add(new Said(Thing.POINT, point.name(), Point.KIND, point.body())));
        products.forEach(product -> all.add(new Said(Thing.PRODUCT, product.id(), Product.KIND, product.body())));
        cleans.forEach(clean -> all.add(new Said(Thing.CLEAN, clean.id(), Clean.KIND, clean.body())));
        rules.forEach(rule -> all.add(new Said(Thing.RULE, rule.id(), Rule.KIND, rule.body())));
        return all;
    }
}
