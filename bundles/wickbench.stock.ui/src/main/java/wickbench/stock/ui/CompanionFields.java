package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.api.lot.LotId;
import wickbench.shell.ActForm;
import wickbench.stock.Companion;
import wickbench.stock.Kit;
import wickbench.stock.Part;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;

/** A part in the box that carries a lot number, and perhaps a date, of its own. */
final class CompanionFields {
    private final Field<Combo> part;
    private final Field<Text> lot;
    private final Field<Text> expiry;

    CompanionFields(ActForm form) {
        part = form.choice("receive.part", List.of());
        part.hint(StockUiWords.get("receive.part.hint"));
        lot = form.text("receive.part-lot");
        expiry = form.text("receive.part-expiry");
    }

    void of(Optional<Kit> kit) {
        part.control()
                .setItems(kit.stream()
                        .flatMap(of -> of.parts().stream())
                        .filter(each -> !each.strip())
                        .map(Part::name)
                        .toArray(String[]::new));
    }

    /** Returns what came with it; empty when a field is wrong. */
    Optional<List<Companion>> collect() {
        lot.clear();
        expiry.clear();
        String name = part.control().getText();
        if (name.isEmpty()) {
            return Optional.of(List.of());
        }
        Optional<String> number = Typed.words(lot);
        if (Typed.some(expiry).isEmpty()) {
            return number.map(id -> List.of(new Companion(name, new LotId(id), Optional.empty())));
        }
        Optional<LocalDate> day = Typed.date(expiry);
        return number.flatMap(id -> day.map(until -> List.of(new Companion(name, new LotId(id), Optional.of(until)))));
    }
}
