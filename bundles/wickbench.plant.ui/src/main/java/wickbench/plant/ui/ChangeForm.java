package wickbench.plant.ui;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Permission;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.product.Product;
import wickbench.plant.site.Line;
import wickbench.shell.ActForm;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** Records that a line was changed from one product to another, which makes its tests due. */
final class ChangeForm {
    private final Stand stand;
    private final Field<Combo> line;
    private final Field<Combo> from;
    private final Field<Combo> to;
    private final Field<Text> at;

    private ChangeForm(Stand stand, ActForm form, Optional<String> first) {
        this.stand = stand;
        List<String> lines = stand.plant().lines().stream().map(Line::id).toList();
        line = form.choice("line.ask", lines);
        line.control().select(Math.max(0, first.map(lines::indexOf).orElse(0)));
        from = form.choice("change.from", List.of());
        to = form.choice("change.to", List.of());
        at = form.text(
                "change.at",
                new SiteTimes(stand.may().zone()).minute(stand.doors().book().now()));
        line.control().addListener(SWT.Selection, event -> offer());
        offer();
        form.act(
                "change.act",
                allowed(),
                this::collect,
                made -> stand.said("change.done").accept(made));
    }

    /** @param line the one in hand */
    static void open(Stand stand, Optional<String> line) {
        stand.open("change", form -> new ChangeForm(stand, form, line));
    }

    /** Opens it for a change that was looked at. */
    static void open(Stand stand, String line, String from, String to) {
        stand.open("change", form -> {
            ChangeForm change = new ChangeForm(stand, form, Optional.of(line));
            change.choose(change.from, from);
            change.choose(change.to, to);
        });
    }

    /** What has happened is recorded, whoever says so; but somebody must say it. */
    private Permission allowed() {
        return stand.may().actor().isPresent()
                ? new Permission.Allowed()
                : new Permission.Denied("desk.nobody", PlantUiWords.get("nobody"));
    }

    private void choose(Field<Combo> field, String product) {
        field.control().select(products().stream().map(Product::id).toList().indexOf(product));
    }

    private List<Product> products() {
        return stand.plant().productsOf(line.control().getText());
    }

    private void offer() {
        String[] names = products().stream().map(Product::name).toArray(String[]::new);
        from.control().setItems(names);
        to.control().setItems(names);
    }

    private Optional<Work<Boolean>> collect() {
        Optional<Product> before = chosen(from);
        Optional<Product> after = chosen(to);
        Optional<Instant> when = Typed.time(at, stand.may().zone());
        if (before.isEmpty() || after.isEmpty() || when.isEmpty()) {
            return Optional.empty();
        }
        ChangeMade made = new ChangeMade(
                line.control().getText(), before.get().id(), after.get().id(), when.get());
        return stand.work(by -> {
            stand.doors().keeping().changed(made, by);
            return true;
        });
    }

    private Optional<Product> chosen(Field<Combo> field) {
        field.clear();
        int at = field.control().getSelectionIndex();
        if (at < 0) {
            field.complain(PlantUiWords.get("change.choose"));
            return Optional.empty();
        }
        return Optional.of(products().get(at));
    }
}
