package wickbench.bench.ui;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** Below the form of a new run: what is said about it, and the buttons, of which those that do nothing now cannot be pressed. */
final class NewRunFoot {
    private final StripEntry entry;
    private final NewStrips strips;
    private final NewRunActs acts;
    private final Label words;
    private final Button take;
    private final Button add;
    private final Button plan;
    private String note = "";

    /**
     * @param owed fills in strips for what is owed
     * @param controls fills in run controls
     */
    NewRunFoot(
            Composite parent,
            Theme theme,
            StripEntry entry,
            NewStrips strips,
            NewRunActs acts,
            Runnable owed,
            Runnable controls) {
        this.entry = entry;
        this.strips = strips;
        this.acts = acts;
        Controls made = theme.controls();
        words = Fit.wide(made.text(parent, Type.BODY, ""));
        Composite bar = Fit.right(made.box(parent, 5));
        take = Wide.button(made.button(bar, FlowWords.get("owed.take"), owed), theme);
        Wide.button(made.button(bar, FlowWords.get("new.controls"), controls), theme);
        Wide.button(made.button(bar, FlowWords.get("new.remove"), acts::removeLast), theme);
        add = Wide.button(made.button(bar, FlowWords.get("new.add"), acts::add), theme);
        plan = Wide.button(made.mainButton(bar, FlowWords.get("new.plan"), acts::toPlan), theme);
    }

    String said() {
        return words.getText();
    }

    void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    /** Keeps what is to be said from the next look on, until one goes on with the form. */
    void note(String text) {
        note = text;
    }

    /**
     * Says what is noted, or else what is still lacking.
     *
     * @param askWho something due waits for somebody to say who they are
     * @param owedByStrip strips do some of what is owed
     */
    void tell(boolean askWho, boolean owedByStrip) {
        boolean noted = entry.untouched() && !note.isEmpty();
        say(askWho ? FlowWords.get("due.who") : noted ? note : needed());
        add.setEnabled(entry.whole() && entry.by().isPresent());
        take.setEnabled(!acts.joins() && owedByStrip);
        plan.setText(FlowWords.get(acts.joins() ? "new.back" : "new.plan"));
        plan.setEnabled(acts.joins() || !strips.isEmpty() || entry.whole());
    }

    private String needed() {
        String needed = entry.needed();
        return needed.isEmpty() ? FlowWords.get(acts.joins() ? "new.enter-one" : "new.enter") : needed;
    }
}
