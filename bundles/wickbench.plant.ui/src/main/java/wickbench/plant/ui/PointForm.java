package wickbench.plant.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.api.method.MethodId;
import wickbench.plant.Stated;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.site.Surface;
import wickbench.shell.ActForm;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** States a sampling point, new or anew: what surface it is, why it is hard to clean, and by which methods it is sampled. */
final class PointForm {
    private final Stand stand;
    private final Field<Text> name;
    private final Field<Combo> line;
    private final Field<Text> area;
    private final Field<Combo> surface;
    private final Field<Text> hard;
    private final Field<Text> methods;
    private final Field<Button> drawn;

    private PointForm(
            Stand stand, ActForm form, Optional<Point> before, List<MethodId> inForce, Consumer<String> done) {
        this.stand = stand;
        name = form.text("point.name", before.map(Point::name).orElse(""));
        name.control().setEnabled(before.isEmpty());
        line = form.choice("line.ask", lines());
        line.control().select(before.map(point -> lines().indexOf(point.line())).orElse(0));
        area = form.text("point.area", before.flatMap(Point::area).orElse(""));
        surface = form.choice(
                "point.surface",
                List.of(Surface.values()).stream().map(PointForm::words).toList());
        surface.control()
                .select(before.map(Point::surface)
                        .orElse(Surface.STAINLESS_STEEL)
                        .ordinal());
        hard = form.text("point.hard", before.flatMap(Point::hard).orElse(""));
        methods = form.text(
                "point.methods",
                before.map(Point::methods).orElse(List.of()).stream()
                        .map(MethodId::value)
                        .collect(Collectors.joining(", ")));
        methods.hint(PlantUiWords.get(
                "point.in-force", inForce.stream().map(MethodId::value).sorted().collect(Collectors.joining(", "))));
        drawn = form.field(
                "point.drawn",
                parent -> stand.context().theme().controls().check(parent, PlantUiWords.get("point.drawn-how")));
        drawn.control().setSelection(before.map(Point::drawn).orElse(false));
        form.act(
                "point.act",
                stand.may().permission(),
                this::collect,
                news -> done.accept(name.control().getText().strip()));
    }

    /** @param done hears the name of the point, when it is stated */
    static void open(Stand stand, Optional<Point> before, List<MethodId> inForce, Consumer<String> done) {
        stand.open(
                before.isPresent() ? "point.change" : "point.new",
                form -> new PointForm(stand, form, before, inForce, done),
                before.map(Point::name).orElse(""));
    }

    private List<String> lines() {
        return stand.plant().lines().stream().map(Line::id).toList();
    }

    static String words(Surface surface) {
        return PlantUiWords.get("surface." + surface.code());
    }

    private Optional<Work<Integer>> collect() {
        Optional<String> called = Typed.words(name);
        Optional<List<MethodId>> by = methods();
        if (called.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        return stand.state(Stated.of(new Point(
                called.get(),
                line.control().getText(),
                Typed.some(area),
                Surface.values()[surface.control().getSelectionIndex()],
                Typed.some(hard),
                by.get(),
                drawn.control().getSelection())));
    }

    private Optional<List<MethodId>> methods() {
        try {
            List<MethodId> by = Arrays.stream(methods.control().getText().split(","))
                    .map(String::strip)
                    .filter(id -> !id.isEmpty())
                    .map(MethodId::new)
                    .toList();
            if (!by.isEmpty()) {
                return Optional.of(by);
            }
            methods.complain(PlantUiWords.get("point.no-method"));
        } catch (IllegalArgumentException e) {
            methods.complain(e.getMessage());
        }
        return Optional.empty();
    }
}
