package wickbench.plant.book;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.plant.PlantState;
import wickbench.plant.Retired;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.changeover.Disputes;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Clean;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validating;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Excused;
import wickbench.plant.programme.Maintained;
import wickbench.plant.programme.Programme.Happened;
import wickbench.plant.programme.Programme.Held;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.site.Spot;

/** Folds what was told up to an instant; the newest statement of a thing holds. */
final class Fold {
    private final ZoneId zone;
    private final Disputes disputes;
    private final Map<String, Line> lines = new TreeMap<>();
    private final Map<String, Point> points = new LinkedHashMap<>();
    private final Map<String, Product> products = new LinkedHashMap<>();
    private final Map<String, Clean> cleans = new TreeMap<>();
    private final Map<String, List<Validating.Told>> ofClean = new TreeMap<>();
    private final Map<String, Held> rules = new TreeMap<>();
    private final Map<String, Spot> spots = new TreeMap<>();
    private final List<ChangeMade> changes = new ArrayList<>();
    private final List<Maintained> maintained = new ArrayList<>();
    private final Map<String, String> excused = new TreeMap<>();
    private Optional<FloorPicture> picture = Optional.empty();

    private Fold(ZoneId zone, Disputes disputes) {
        this.zone = zone;
        this.disputes = disputes;
    }

    /** @param told in order */
    static Fold of(List<Told> told, Instant at, ZoneId zone, Disputes disputes) {
        Fold fold = new Fold(zone, disputes);
        told.stream().filter(each -> !each.acted().isAfter(at)).forEach(fold::take);
        return fold;
    }

    private void take(Told told) {
        Object what = told.what();
        if (what instanceof Line line) {
            lines.put(line.id(), line);
        } else if (what instanceof Point point) {
            points.put(point.name(), point);
        } else if (what instanceof Product product) {
            products.put(product.id(), product);
        } else if (what instanceof Rule rule) {
            Held before = rules.get(rule.id());
            // what was due stays due when a rule is put in other words
            rules.put(rule.id(), new Held(rule, before == null ? told.acted() : before.from()));
        } else if (what instanceof Retired retired) {
            retire(retired);
        } else {
            happened(told, what);
        }
    }

    private void happened(Told told, Object what) {
        if (what instanceof FloorPicture newest) {
            picture = Optional.of(newest);
        } else if (what instanceof Spot spot) {
            spots.put(spot.point(), spot);
        } else if (what instanceof ChangeMade change) {
            changes.add(change);
        } else if (what instanceof Maintained done) {
            maintained.add(done);
        } else if (what instanceof Excused answer) {
            excused.put(answer.rule() + "@" + answer.occasion(), answer.reason());
        } else {
            ofClean(told, what);
        }
    }

    private void ofClean(Told told, Object what) {
        if (what instanceof Clean clean) {
            cleans.put(clean.id(), clean);
            clean(clean.id(), told);
        } else if (what instanceof Series series) {
            clean(series.clean(), told);
        } else if (what instanceof SeriesRun run) {
            clean(run.clean(), told);
        } else if (what instanceof Confirmed confirmed) {
            clean(confirmed.clean(), told);
        } else if (what instanceof Changed changed) {
            clean(changed.clean(), told);
        }
    }

    private void clean(String id, Told told) {
        ofClean.computeIfAbsent(id, clean -> new ArrayList<>())
                .add(new Validating.Told(told.acted().atZone(zone).toLocalDate(), told.what()));
    }

    /** What one station retired and another stated meanwhile stays until somebody settles it. */
    private void retire(Retired retired) {
        if (disputes.on(retired.what().code(), retired.id())) {
            return;
        }
        Map<String, ?> of = switch (retired.what()) {
            case LINE -> lines;
            case POINT -> points;
            case PRODUCT -> products;
            case CLEAN -> cleans;
            case RULE -> rules;
        };
        of.remove(retired.id());
    }

    Happened happened() {
        return new Happened(
                changes.stream().sorted(Comparator.comparing(ChangeMade::at)).toList(), maintained, excused);
    }

    PlantState state(Instant at, Validating.SeriesJudge judge) {
        return new PlantState(
                List.copyOf(lines.values()),
                List.copyOf(points.values()),
                List.copyOf(products.values()),
                cleans.values().stream()
                        .map(clean -> Validating.fold(
                                clean,
                                ofClean.getOrDefault(clean.id(), List.of()),
                                at.atZone(zone).toLocalDate(),
                                judge))
                        .toList(),
                List.copyOf(rules.values()),
                picture,
                List.copyOf(spots.values()),
                disputes);
    }
}
