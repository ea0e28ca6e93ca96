package wickbench.plant.face;

import java.util.List;
import wickbench.api.json.Json;
import wickbench.plant.Stated;
import wickbench.plant.book.PlantFile;

/** Makes the document that would state the same, so that what is typed is checked as what stands in a file. */
final class FileOf {
    private FileOf() {}

    static Stated read(Stated things) {
        Json.Obj file = Json.object()
                .with(
                        "lines",
                        bodies(things.lines().stream().map(line -> line.body()).toList()))
                .with(
                        "points",
                        bodies(things.points().stream()
                                .map(point -> point.body())
                                .toList()))
                .with(
                        "products",
                        bodies(things.products().stream()
                                .map(product -> product.body())
                                .toList()))
                .with(
                        "cleans",
                        bodies(things.cleans().stream()
                                .map(clean -> clean.body())
                                .toList()))
                .with(
                        "rules",
                        bodies(things.rules().stream().map(rule -> rule.body()).toList()));
        return PlantFile.of("plant", file).orRefuse();
    }

    private static Json bodies(List<Json.Obj> bodies) {
        return Json.array(bodies);
    }
}
