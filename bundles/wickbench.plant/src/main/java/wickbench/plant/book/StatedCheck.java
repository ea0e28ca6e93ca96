package wickbench.plant.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.plant.PlantState;
import wickbench.plant.Stated;
import wickbench.plant.Thing;
import wickbench.plant.programme.Programme.Held;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.Sampling;
import wickbench.plant.terms.PlantWords;

/** Whether things that are stated together name only what there is. */
final class StatedCheck {
    private final PlantState now;
    private final Set<String> told = new HashSet<>();
    private final List<Complaint> complaints = new ArrayList<>();

    private StatedCheck(PlantState now) {
        this.now = now;
    }

    /** @throws BadInput with a line for each thing that is wrong */
    static void of(Stated things, PlantState now) {
        StatedCheck check = new StatedCheck(now);
        for (Stated.Said said : things.all()) {
            if (!check.told.add(key(said.what(), said.id()))) {
                check.complain(said.what(), said.id(), "stated.twice", said.id());
            }
        }
        things.points().forEach(point -> check.line(Thing.POINT, point.name(), point.line()));
        things.products()
                .forEach(product -> product.lines().forEach(line -> check.line(Thing.PRODUCT, product.id(), line)));
        things.cleans().forEach(clean -> check.line(Thing.CLEAN, clean.id(), clean.line()));
        things.rules().forEach(check::rule);
        if (!check.complaints.isEmpty()) {
            throw new BadInput(check.complaints);
        }
    }

    private void rule(Rule rule) {
        line(Thing.RULE, rule.id(), rule.line());
        rule.points().stream()
                .map(Sampling::place)
                .filter(place -> !there(Thing.POINT, place))
                .forEach(place -> complain(Thing.RULE, rule.id(), "point.unknown", place));
    }

    private void line(Thing what, String id, String line) {
        if (!there(Thing.LINE, line)) {
            complain(what, id, "line.unknown", line);
        }
    }

    private boolean there(Thing what, String id) {
        return told.contains(key(what, id)) || now.has(what, id);
    }

    private void complain(Thing what, String id, String code, Object... values) {
        complaints.add(Complaint.of(what.code() + " " + id, PlantWords.get(code, values)));
    }

    private static String key(Thing what, String id) {
        return what.code() + ":" + id;
    }

    /** Returns what is stated already, as entries say it. */
    static List<Json> bodies(PlantState now) {
        Stated all = new Stated(
                now.lines(),
                now.points(),
                now.products(),
                now.cleans().stream().map(each -> each.clean()).toList(),
                now.rules().stream().map(Held::rule).toList());
        return Stream.of(all)
                .flatMap(each -> each.all().stream())
                .<Json>map(Stated.Said::body)
                .toList();
    }
}
