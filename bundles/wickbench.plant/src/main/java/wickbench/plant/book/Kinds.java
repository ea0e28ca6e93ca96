package wickbench.plant.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.plant.Retired;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Clean;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Excused;
import wickbench.plant.programme.Maintained;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.site.Spot;

/** The kinds of entry of this bundle, and how the body of each is read. */
final class Kinds {
    static final int VERSION = 1;

    private static final Map<String, Function<Fields, ? extends Checked<?>>> READERS = readers();

    private Kinds() {}

    static boolean knows(String kind, int version) {
        return version == VERSION && READERS.containsKey(kind);
    }

    static Checked<?> read(String kind, Fields fields) {
        return READERS.get(kind).apply(fields);
    }

    private static Map<String, Function<Fields, ? extends Checked<?>>> readers() {
        Map<String, Function<Fields, ? extends Checked<?>>> readers = new LinkedHashMap<>();
        readers.put(Line.KIND, Line::read);
        readers.put(Point.KIND, Point::read);
        readers.put(Product.KIND, Product::read);
        readers.put(Clean.KIND, Clean::read);
        readers.put(Rule.KIND, Rule::read);
        readers.put(Retired.KIND, Retired::read);
        readers.put(FloorPicture.KIND, FloorPicture::read);
        readers.put(Spot.KIND, Spot::read);
        readers.put(ChangeMade.KIND, ChangeMade::read);
        readers.put(Maintained.KIND, Maintained::read);
        readers.put(Excused.KIND, Excused::read);
        readers.put(Series.KIND, Series::read);
        readers.put(SeriesRun.KIND, SeriesRun::read);
        readers.put(Confirmed.KIND, Confirmed::read);
        readers.put(Changed.KIND, Changed::read);
        return readers;
    }
}
