package wickbench.bench.ui;

import java.util.function.Consumer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.method.Method;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.shell.PageContext;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What can be done about an issued method, below its head. */
record MethodButtons(
        PageContext context,
        Known known,
        Consumer<Method> renew,
        Consumer<Method> withdraw,
        Consumer<IssuedMethod> verify,
        MethodPaperActs papers) {
    void fill(Composite content, IssuedMethod row) {
        Method method = row.method();
        Composite buttons = context.theme().controls().row(content);
        button(buttons, "write.version", () -> renew.accept(method));
        Button show = button(buttons, "verify.open", () -> verify.accept(row));
        button(buttons, "paper.card", () -> papers.card(method));
        button(buttons, "paper.evidence", () -> papers.evidence(method));
        allowed(content, show, known.rights().verify());
        if (row.until().isEmpty()) {
            Button end = button(buttons, "withdraw.open", () -> withdraw.accept(method));
            allowed(content, end, known.rights().withdraw());
        }
    }

    private Button button(Composite row, String words, Runnable act) {
        return context.theme().controls().button(row, BenchUiWords.get(words), act);
    }

    private void allowed(Composite content, Button button, Permission said) {
        if (said instanceof Denied denied) {
            button.setEnabled(false);
            Theme theme = context.theme();
            theme.controls()
                    .text(content, Type.SMALL, denied.text())
                    .setForeground(theme.color(theme.palette().quiet()));
        }
    }
}
