package wickbench.stock.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;

/** The revision of the insert in the box, held against that of the site's methods while it is typed. */
final class InsertField {
    private final Field<Text> field;
    private final Runnable grown;
    private List<String> written = List.of();

    InsertField(Field<Text> field, Runnable grown) {
        this.field = field;
        this.grown = grown;
        field.control().addListener(SWT.Modify, event -> compare());
    }

    /** @param revisions by which the methods of the chosen kit are written */
    void against(List<String> revisions) {
        written = revisions;
        compare();
    }

    private void compare() {
        String asked = String.join(", ", written);
        Optional<String> found = Typed.some(field);
        if (written.isEmpty()) {
            field.clear();
        } else if (found.isEmpty()) {
            field.hint(StockUiWords.get("receive.insert.ask", asked));
        } else if (written.stream().allMatch(found.get()::equals)) {
            field.hint(StockUiWords.get("receive.insert.same"));
        } else {
            field.mind(StockUiWords.get("receive.insert.other", found.get(), asked));
        }
        grown.run();
    }

    /** Tells whether what is asked for is said; says below the field that it is not. */
    boolean said() {
        boolean missing = !written.isEmpty() && Typed.some(field).isEmpty();
        if (missing) {
            field.complain(StockUiWords.get("receive.insert.ask", String.join(", ", written)));
        }
        return !missing;
    }

    Optional<String> revision() {
        return Typed.some(field);
    }
}
