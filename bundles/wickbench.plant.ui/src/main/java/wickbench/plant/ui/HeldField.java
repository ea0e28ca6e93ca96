package wickbench.plant.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.plant.allergen.Allergen;
import wickbench.plant.allergen.AllergenList;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Form;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.PlantTerms;
import wickbench.widgets.Controls;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The allergens of a product: chosen from a published list, each with the form in which it comes and the part of it. */
final class HeldField {
    private final Controls controls;
    private final Runnable grown;
    private final Composite box;
    private final Composite rows;
    private final Combo lists;
    private final Combo allergens;
    private final Combo forms;
    private final Text part;
    private final List<Contained> held;

    HeldField(Composite parent, Theme theme, List<Contained> before, Runnable grown) {
        controls = theme.controls();
        this.grown = grown;
        held = new ArrayList<>(before);
        box = controls.box(parent, 1);
        rows = wickbench.widgets.Fit.wide(controls.box(box, 2));
        Composite add = controls.row(box);
        lists = choice(
                add,
                "held.list",
                List.of(AllergenList.values()).stream()
                        .map(list -> PlantUiWords.get("list." + list.code()))
                        .toList());
        allergens = choice(add, "held.allergen", List.of());
        forms = choice(
                add,
                "held.form",
                List.of(Form.values()).stream()
                        .map(form -> PlantTerms.said("form." + form.code()))
                        .toList());
        part = Names.give(controls.field(add), () -> PlantUiWords.get("held.part"));
        part.setMessage(PlantUiWords.get("held.part"));
        controls.button(add, PlantUiWords.get("held.add"), this::add);
        lists.addListener(SWT.Selection, event -> offer());
        lists.select(0);
        forms.select(Form.POWDER.ordinal());
        offer();
        show();
    }

    private Combo choice(Composite parent, String key, List<String> words) {
        return Names.give(controls.choice(parent, words), () -> PlantUiWords.get(key));
    }

    Composite control() {
        return box;
    }

    List<Contained> held() {
        return List.copyOf(held);
    }

    private List<Allergen> offered() {
        AllergenList list = AllergenList.values()[lists.getSelectionIndex()];
        return Allergens.all().stream()
                .filter(allergen -> allergen.lists().contains(list))
                .toList();
    }

    private void offer() {
        AllergenList list = AllergenList.values()[lists.getSelectionIndex()];
        lists.setToolTipText(PlantUiWords.get("held.source", list.source(), list.date()));
        allergens.setItems(offered().stream()
                .map(allergen -> ChangeWords.name(allergen.code()))
                .toArray(String[]::new));
    }

    private void add() {
        int at = allergens.getSelectionIndex();
        if (at >= 0) {
            held.add(new Contained(
                    offered().get(at).code(),
                    Form.values()[forms.getSelectionIndex()],
                    Optional.of(part.getText().strip()).filter(text -> !text.isEmpty()),
                    Optional.empty()));
            part.setText("");
            show();
        }
    }

    private void show() {
        PlantRoom.clear(rows);
        held.forEach(each -> {
            controls.label(rows, Type.BODY, ChangeWords.held(each));
            controls.buttonOfMany(rows, PlantUiWords.get("held.off"), () -> {
                held.remove(each);
                show();
            });
        });
        rows.requestLayout();
        grown.run();
    }
}
