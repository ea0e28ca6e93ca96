package wickbench.plant.book;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.plant.Stated;
import wickbench.plant.clean.Clean;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;
import wickbench.plant.terms.PlantWords;

/** A plant in one JSON file; the schema is {@code docs/formats/plant-1.schema.json}. */
public final class PlantFile {
    private static final long LARGEST = 1 << 22;
    private static final List<String> MEMBERS = List.of("about", "lines", "points", "products", "cleans", "rules");

    private final String source;
    private final Json.Obj object;
    private final List<Complaint> complaints = new ArrayList<>();

    private PlantFile(String source, Json.Obj object) {
        this.source = source;
        this.object = object;
    }

    /**
     * Reads a file.
     *
     * @throws BadInput with a line for each thing that is wrong
     */
    public static Stated read(Path file) {
        String name = file.getFileName().toString();
        try {
            if (Files.size(file) > LARGEST) {
                throw Said.wrong(name, "matrix.large", LARGEST);
            }
            return JsonReader.readObject(name, Files.readString(file))
                    .then(object -> of(name, object))
                    .orRefuse();
        } catch (NoSuchFileException e) {
            throw Said.wrong(name, "matrix.absent");
        } catch (MalformedInputException e) {
            throw Said.wrong(name, "file.text");
        } catch (IOException e) {
            throw Said.wrong(name, "matrix.unreadable", e.getMessage());
        }
    }

    /** Reads a plant out of a document. */
    public static Checked<Stated> of(String source, Json.Obj object) {
        return new PlantFile(source, object).stated();
    }

    /**
     * Checks things that were made otherwise as those of a file are.
     *
     * @throws BadInput with a line for each thing that is wrong
     */
    static void check(Stated things) {
        List<Complaint> complaints = new ArrayList<>();
        for (Stated.Said said : things.all()) {
            Fields fields = Fields.of(said.what().code() + " " + said.id(), said.body());
            complaints.addAll(Kinds.read(said.kind(), fields).complaints());
        }
        if (!complaints.isEmpty()) {
            throw new BadInput(complaints);
        }
    }

    private Checked<Stated> stated() {
        object.members().keySet().stream()
                .filter(name -> !MEMBERS.contains(name))
                .forEach(name -> complaints.add(Complaint.of(source, name, "is not a field of this format")));
        List<Line> lines = each("lines", Line::read);
        List<Point> points = each("points", Point::read);
        List<Product> products = each("products", Product::read);
        List<Clean> cleans = each("cleans", Clean::read);
        List<Rule> rules = each("rules", Rule::read);
        if (products.size() > ChangeTable.MOST) {
            complaints.add(
                    Complaint.of(source, "products", PlantWords.get("matrix.many", ChangeTable.MOST, products.size())));
        }
        return complaints.isEmpty()
                ? Checked.good(new Stated(lines, points, products, cleans, rules))
                : Checked.bad(complaints);
    }

    private <T> List<T> each(String name, Function<Fields, Checked<T>> read) {
        List<T> found = new ArrayList<>();
        Json list = object.get(name).orElse(Json.array(List.of()));
        if (!(list instanceof Json.Arr items)) {
            complaints.add(Complaint.of(source, name, "expected a list"));
            return found;
        }
        for (int i = 0; i < items.items().size(); i++) {
            String where = name + "[" + i + "]";
            if (items.items().get(i) instanceof Json.Obj item) {
                Checked<T> checked = read.apply(Fields.of(source + ": " + where, item));
                complaints.addAll(checked.complaints());
                if (checked instanceof Checked.Good<T> good) {
                    found.add(good.value());
                }
            } else {
                complaints.add(Complaint.of(source, where, "expected an object"));
            }
        }
        return found;
    }
}
