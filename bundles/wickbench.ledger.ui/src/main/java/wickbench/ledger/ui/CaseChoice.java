package wickbench.ledger.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permission.Denied;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Product;
import wickbench.ledger.ui.ActSheets.Choice;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What may be decided of a case: about which product, with which root cause, and a button for each move. */
record CaseChoice(Composite card, Theme theme, ActDoors.Known known) {

    /** @param choose hears what the person wants to decide, before it is signed */
    void fill(Case of, Consumer<Choice> choose) {
        Form form = new Form(card, theme);
        List<String> names = of.products().stream().map(Product::name).toList();
        List<String> choices = new ArrayList<>(List.of(LedgerUiWords.get("case.all")));
        names.stream().filter(name -> !name.isEmpty()).forEach(choices::add);
        Field<Combo> which = form.choice(LedgerUiWords.get("case.which"), choices);
        which.control().select(0);
        Field<Text> cause = form.text(LedgerUiWords.get("case.cause-field"));
        of.cause().ifPresent(cause.control()::setText);
        Composite row = theme.controls().row(card);
        moves(of)
                .forEach(move -> button(
                        row,
                        of,
                        move,
                        () -> choose.accept(new Choice(
                                of.result().id(),
                                move,
                                which.control().getSelectionIndex() <= 0
                                        ? List.of()
                                        : List.of(which.control().getText()),
                                Optional.of(cause.control().getText().strip()).filter(text -> !text.isEmpty())))));
        denied();
    }

    private static List<Move> moves(Case of) {
        return Arrays.stream(Move.values())
                .filter(move -> of.products().stream()
                        .anyMatch(product -> move.from(product.state()).isPresent()))
                .filter(move -> move.orders()
                        .filter(owed -> of.owed().stream()
                                .anyMatch(item -> !item.done() && item.step().owed() == owed))
                        .isEmpty())
                .toList();
    }

    private void button(Composite row, Case of, Move move, Runnable act) {
        Button button = theme.controls().button(row, LedgerUiWords.get("do." + move.code()), act);
        button.setLayoutData(null);
        if (permission(move) instanceof Denied denied) {
            button.setEnabled(false);
            button.setToolTipText(denied.text());
        }
    }

    private Permission permission(Move move) {
        return known.rights().to(move == Move.RELEASE ? Act.RELEASE : Act.DECIDE_ACTION);
    }

    /** Says in words why a button is disabled. */
    private void denied() {
        List.of(Act.DECIDE_ACTION, Act.RELEASE).stream()
                .map(act -> known.rights().to(act))
                .filter(Denied.class::isInstance)
                .map(permission -> ((Denied) permission).text())
                .distinct()
                .forEach(text -> theme.controls().text(card, Type.SMALL, text));
    }
}
