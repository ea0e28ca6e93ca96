package wickbench.demo;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.json.Json;

/**
 * The plant book of the demonstration, as {@code demo/site.json} and {@code demo/spots.json} hold it.
 *
 * @param spots where each point lies on the floor picture
 */
record PlantSite(Json.Obj file, List<Json.Obj> spots) {

    /** Something that is stated, as its entry says it. */
    record Stated(String kind, Json.Obj body) {}

    /** Returns everything but the rules, what others rest on first. */
    List<Stated> stated() {
        List<Stated> stated = new ArrayList<>();
        each("lines").forEach(body -> stated.add(new Stated("line.stated", body)));
        each("points").forEach(body -> stated.add(new Stated("point.stated", body)));
        each("products").forEach(body -> stated.add(new Stated("product.stated", body)));
        each("cleans").forEach(body -> stated.add(new Stated("cleaning.stated", body)));
        return stated;
    }

    List<Json.Obj> rules() {
        return each("rules");
    }

    private List<Json.Obj> each(String name) {
        return objects(file.get(name).orElseThrow());
    }

    static List<Json.Obj> objects(Json list) {
        return ((Json.Arr) list).items().stream().map(Json.Obj.class::cast).toList();
    }
}
