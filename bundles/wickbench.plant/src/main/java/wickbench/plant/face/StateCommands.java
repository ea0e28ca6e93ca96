package wickbench.plant.face;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.method.MethodId;
import wickbench.plant.Retired;
import wickbench.plant.Stated;
import wickbench.plant.Thing;
import wickbench.plant.book.PlantFile;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Clean;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Product;
import wickbench.plant.product.Soil;
import wickbench.plant.programme.Maintained;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.FloorPicture;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.site.Spot;
import wickbench.plant.site.Surface;
import wickbench.plant.terms.PlantWords;

/** Commands that state what there is, from a file or one by one, and what has happened. */
abstract class StateCommands extends OrderCommands {
    private static final int WEEK = 7;
    private static final int DAY = 24;

    StateCommands(Doors doors) {
        super(doors);
    }

    @Command(name = "import")
    int read(@Parameters(paramLabel = "FILE.json") Path file, @Option(names = "--sign") boolean sign) {
        return state(PlantFile.read(file), sign);
    }

    private int state(Stated things, boolean sign) {
        int news = doors.keeping().state(things, doors.hands().actor(sign));
        doors.terminal().note(PlantWords.get("stated.done", news, things.all().size()));
        return 0;
    }

    @Command(name = "line")
    int line(
            @Parameters(paramLabel = "LINE") String id,
            @Option(names = "--name", required = true, paramLabel = "TEXT") String name,
            @Option(names = "--area", paramLabel = "TEXT") List<String> areas,
            @Option(names = "--change", paramLabel = "MINUTES", defaultValue = "0") int minutes,
            @Option(names = "--draw-share", paramLabel = "SHARE") BigDecimal share,
            @Option(names = "--draw-confidence", paramLabel = "SHARE") BigDecimal confidence,
            @Option(names = "--sign") boolean sign) {
        Optional<Line.Random> random = share == null || confidence == null
                ? Optional.empty()
                : Optional.of(new Line.Random(share, confidence));
        return state((Stated.of(new Line(id, name, some(areas), minutes, random))), sign);
    }

    @Command(name = "point")
    int point(
            @Parameters(paramLabel = "POINT") String name,
            @Option(names = "--line", required = true, paramLabel = "LINE") String line,
            @Option(names = "--area", paramLabel = "TEXT") Optional<String> area,
            @Option(names = "--surface", required = true, paramLabel = "SURFACE") String surface,
            @Option(names = "--hard", paramLabel = "TEXT") Optional<String> hard,
            @Option(names = "--method", paramLabel = "METHOD") List<String> methods,
            @Option(names = "--drawn") boolean drawn,
            @Option(names = "--sign") boolean sign) {
        List<MethodId> by = some(methods).stream()
                .map(id -> Typed.of("--method", id, MethodId::new))
                .toList();
        Surface of = Typed.choice("--surface", surface, Surface.class);
        return state((Stated.of(new Point(name, line, area, of, hard, by, drawn))), sign);
    }

    @Command(name = "product")
    int product(
            @Parameters(paramLabel = "PRODUCT") String id,
            @Option(names = "--name", required = true, paramLabel = "TEXT") String name,
            @Option(names = "--line", required = true, paramLabel = "LINE") List<String> lines,
            @Option(names = "--holds", paramLabel = "ALLERGEN[:FORM[:PART]]") List<String> holds,
            @Option(names = "--holds-none") boolean none,
            @Option(names = "--not-stated") boolean notStated,
            @Option(names = "--soil", paramLabel = "SOIL", defaultValue = "light") String soil,
            @Option(names = "--sign") boolean sign) {
        List<Contained> held = some(holds).stream().map(Typed::contained).toList();
        int said = (held.isEmpty() ? 0 : 1) + (none ? 1 : 0) + (notStated ? 1 : 0);
        if (said != 1) {
            throw Typed.wrong("--holds", "product.holds", id);
        }
        Soil sticks = Typed.choice("--soil", soil, Soil.class);
        return state(
                (Stated.of(new Product(
                        id, name, Set.copyOf(lines), notStated ? Optional.empty() : Optional.of(held), sticks))),
                sign);
    }

    @Command(name = "clean")
    int clean(
            @Parameters(paramLabel = "CLEAN") String id,
            @Option(names = "--line", required = true, paramLabel = "LINE") String line,
            @Option(names = "--name", required = true, paramLabel = "TEXT") String name,
            @Option(names = "--how", required = true, paramLabel = "HOW") String how,
            @Option(names = "--minutes", required = true, paramLabel = "N") int minutes,
            @Option(names = "--edition", paramLabel = "N", defaultValue = "1") int edition,
            @Option(names = "--removes", paramLabel = "ALLERGEN") List<String> removes,
            @Option(names = "--sign") boolean sign) {
        Clean.How way = Typed.choice("--how", how, Clean.How.class);
        Set<String> of = Set.copyOf(Typed.allergens("--removes", some(removes)));
        return state((Stated.of(new Clean(id, line, name, way, minutes, edition, of))), sign);
    }

    @Command(name = "rule")
    int rule(
            @Parameters(paramLabel = "RULE") String id,
            @Option(names = "--line", required = true, paramLabel = "LINE") String line,
            @Option(names = "--when", required = true, paramLabel = "WHEN") String when,
            @Option(names = "--leaving", paramLabel = "ALLERGEN") List<String> leaving,
            @Option(names = "--every-days", paramLabel = "N") Optional<Integer> days,
            @Option(names = "--within-hours", paramLabel = "N") Optional<Integer> hours,
            @Option(names = "--point", paramLabel = "PLACE=METHOD") List<String> points,
            @Option(names = "--sign") boolean sign) {
        Rule rule = new Rule(
                id,
                line,
                Typed.choice("--when", when, Rule.When.class),
                Set.copyOf(Typed.allergens("--leaving", some(leaving))),
                days.orElse(WEEK),
                hours.orElse(DAY),
                some(points).stream()
                        .map(text -> Typed.sampling("--point", text))
                        .toList());
        return state((Stated.of(rule)), sign);
    }

    @Command(name = "retire")
    int retire(
            @Parameters(paramLabel = "line|point|product|clean|rule") String what,
            @Parameters(paramLabel = "ID", index = "1") String id,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        Thing thing = Typed.choice("line|point|product|clean|rule", what, Thing.class);
        doors.keeping().retire(new Retired(thing, id, reason), doors.hands().actor(sign));
        return 0;
    }

    @Command(name = "changed")
    int changed(
            @Parameters(paramLabel = "FROM") String from,
            @Parameters(paramLabel = "TO") String to,
            @Option(names = "--line", required = true, paramLabel = "LINE") String line,
            @Option(names = "--at", paramLabel = "TIME") Optional<String> at) {
        doors.keeping()
                .changed(new ChangeMade(line, from, to, at(at)), doors.hands().actor(false));
        return 0;
    }

    @Command(name = "maintained")
    int maintained(
            @Parameters(paramLabel = "LINE") String line,
            @Option(names = "--what", required = true, paramLabel = "TEXT") String what,
            @Option(names = "--at", paramLabel = "TIME") Optional<String> at) {
        doors.keeping()
                .maintained(new Maintained(line, what, at(at)), doors.hands().actor(false));
        return 0;
    }

    Instant at(Optional<String> typed) {
        return typed.map(text -> Typed.time("--at", text, doors.book().zone())).orElseGet(doors.book()::now);
    }

    @Command(name = "picture")
    int picture(@Parameters(paramLabel = "FILE") Path file, @Option(names = "--sign") boolean sign) {
        FloorPicture picture = doors.keeping().picture(file, doors.hands().actor(sign));
        doors.terminal().note(PlantWords.get("picture.done", picture.width(), picture.height()));
        return 0;
    }

    @Command(name = "place")
    int place(
            @Parameters(paramLabel = "POINT") String point,
            @Parameters(paramLabel = "X", index = "1") BigDecimal x,
            @Parameters(paramLabel = "Y", index = "2") BigDecimal y,
            @Option(names = "--sign") boolean sign) {
        Spot spot = doors.keeping().place(point, x, y, doors.hands().actor(sign));
        doors.terminal().note(PlantWords.get("picture.placed", spot.point()));
        return 0;
    }
}
