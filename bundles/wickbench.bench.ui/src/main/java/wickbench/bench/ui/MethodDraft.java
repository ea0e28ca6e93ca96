package wickbench.bench.ui;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permission.Denied;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.method.Method;
import wickbench.bench.ui.MethodActs.Draft;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** A method read from a file and not issued yet: what is wrong with it, or all that it says and the button to issue it. */
record MethodDraft(Composite parent, PageContext context, MethodCard card) {

    void fill(Draft draft, Permission may, java.util.function.Consumer<Method> issue, Runnable leave) {
        if (draft.read() instanceof Checked.Good<Method> good) {
            Composite row = offer(good.value(), BenchUiWords.get("draft.note", draft.file()), may, issue);
            context.theme().controls().button(row, BenchUiWords.get("draft.leave"), leave);
        } else {
            Fit.wide(new Note(parent, context.theme(), Meaning.ALARM, BenchUiWords.get("draft.wrong", draft.file())));
            draft.read().complaints().forEach(this::complaint);
            context.theme().controls().button(parent, BenchUiWords.get("draft.leave"), leave);
        }
    }

    /** Shows a method that nothing is wrong with; returns the row of its buttons. */
    Composite offer(Method method, String note, Permission may, java.util.function.Consumer<Method> issue) {
        Fit.wide(new Note(parent, context.theme(), Meaning.NOTICE, note));
        Composite row = context.theme().controls().row(parent);
        Button main =
                context.theme().controls().mainButton(row, BenchUiWords.get("draft.issue"), () -> issue.accept(method));
        if (may instanceof Denied denied) {
            main.setEnabled(false);
            context.theme().controls().text(parent, Type.SMALL, denied.text());
        }
        card.draft(method);
        return row;
    }

    private void complaint(Complaint complaint) {
        Mark mark = new Mark("", Shape.TRIANGLE, Meaning.ALARM);
        Fit.wide(new MarkedLine(parent, context.theme(), mark, complaint.oneLine()));
    }
}
