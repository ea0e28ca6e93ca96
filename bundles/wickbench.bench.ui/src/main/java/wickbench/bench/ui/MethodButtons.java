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

/** What can be done about an issued method, below its head. */
record MethodButtons(PageContext context, Known known, Consumer<Method> renew, Consumer<Method> withdraw) {
    void fill(Composite content, IssuedMethod row) {
        Composite buttons = context.theme().controls().row(content);
        context.theme().controls().button(buttons, BenchUiWords.get("write.version"), () -> renew.accept(row.method()));
        if (row.until().isEmpty()) {
            Button button = context.theme()
                    .controls()
                    .button(buttons, BenchUiWords.get("withdraw.open"), () -> withdraw.accept(row.method()));
            allowed(content, button, known.rights().withdraw());
        }
    }

    private void allowed(Composite content, Button button, Permission said) {
        if (said instanceof Denied denied) {
            button.setEnabled(false);
            context.theme().controls().quiet(content, denied.text());
        }
    }
}
