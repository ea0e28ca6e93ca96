package wickbench.plant;

import java.util.List;
import java.util.Optional;
import wickbench.plant.changeover.Disputes;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Programme.Held;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.site.Spot;

/**
 * The plant as it is stated at an instant.
 *
 * @param cleans each with how it stands
 * @param picture the newest; empty before the first
 * @param spots of points on the picture
 * @param disputes what stations stated differently; the newest word is shown, and no change that rests on it may be made
 */
public record PlantState(
        List<Line> lines,
        List<Point> points,
        List<Product> products,
        List<Validation> cleans,
        List<Held> rules,
        Optional<FloorPicture> picture,
        List<Spot> spots,
        Disputes disputes) {
    public PlantState {
        lines = List.copyOf(lines);
        points = List.copyOf(points);
        products = List.copyOf(products);
        cleans = List.copyOf(cleans);
        rules = List.copyOf(rules);
        spots = List.copyOf(spots);
    }

    public Optional<Line> line(String id) {
        return lines.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    public Optional<Product> product(String id) {
        return products.stream().filter(product -> product.id().equals(id)).findFirst();
    }

    public Optional<Validation> clean(String id) {
        return cleans.stream().filter(each -> each.clean().id().equals(id)).findFirst();
    }

    public Optional<Spot> spot(String point) {
        return spots.stream().filter(spot -> spot.point().equals(point)).findFirst();
    }

    public List<Point> pointsOf(String line) {
        return points.stream().filter(point -> point.line().equals(line)).toList();
    }

    public List<Product> productsOf(String line) {
        return products.stream()
                .filter(product -> product.lines().contains(line))
                .toList();
    }

    public List<Validation> cleansOf(String line) {
        return cleans.stream().filter(each -> each.clean().line().equals(line)).toList();
    }

    /** Tells whether stations stated something differently. */
    public boolean disputed(Thing what, String id) {
        return disputes.on(what.code(), id);
    }

    /** Tells whether something of a sort is stated. */
    public boolean has(Thing what, String id) {
        return switch (what) {
            case LINE -> line(id).isPresent();
            case POINT -> points.stream().anyMatch(point -> point.name().equals(id));
            case PRODUCT -> product(id).isPresent();
            case CLEAN -> clean(id).isPresent();
            case RULE -> rules.stream().anyMatch(held -> held.rule().id().equals(id));
        };
    }
}
