package wickbench.ledger.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.method.MethodId;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.shell.ActForm;
import wickbench.shell.ActForm.Titled;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Typed;

/** The form in which a reviewer says what a line asks for before it is released. */
final class PlanForm {
    private static final int AREA_HEIGHT = 120;
    private static final String IS = "=";

    private final Theme theme;
    private final ActForm form;
    private final Field<Text> line;
    private final Field<Text> points;

    /**
     * Makes it.
     *
     * @param sign takes line and points, to be signed with a reason
     */
    PlanForm(
            Composite parent,
            PageContext context,
            ActDoors.Known known,
            Consumer<ReleasePlan> sign,
            Runnable grown,
            Runnable leave) {
        theme = context.theme();
        Titled what = new Titled(LedgerUiWords.get("plan.title-of-form"), LedgerUiWords.get("plan.line-of-form"));
        form = new ActForm(parent, context, LedgerUiWords::get, what, grown, leave);
        line = form.text("plan.line");
        points = form.field("plan.points", theme.controls()::area);
        ((GridData) points.control().getLayoutData()).heightHint = theme.px(AREA_HEIGHT);
        points.hint(LedgerUiWords.get("plan.points-hint"));
        // Tab leads on to the buttons; a point has no tab in it
        points.control().addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                event.doit = true;
            }
        });
        form.button("plan.sign", known.rights().to(Act.PLAN_RELEASE), () -> said().ifPresent(sign));
    }

    void focus() {
        form.focus();
    }

    /** Lists what is planned, each to be changed. */
    void list(Composite parent, List<ReleasePlan> plans) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, LedgerUiWords.get("plan.plans"));
        if (plans.isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("plan.none"));
        }
        plans.forEach(plan -> plan(card, plan));
    }

    private void plan(Composite card, ReleasePlan plan) {
        Composite row = Fit.wide(theme.controls().box(card, 2));
        String asked = plan.points().isEmpty()
                ? LedgerUiWords.get("plan.nothing")
                : plan.points().stream()
                        .map(point -> point.place() + " \u00b7 " + point.method())
                        .collect(Collectors.joining("\n"));
        theme.controls().text(row, Type.BODY, LedgerUiWords.get("plan.of", plan.line(), plan.reason()) + "\n" + asked);
        theme.controls().buttonOfMany(row, LedgerUiWords.get("plan.change", plan.line()), () -> offer(plan));
    }

    private void offer(ReleasePlan plan) {
        line.control().setText(plan.line());
        points.control()
                .setText(plan.points().stream()
                        .map(point -> point.place() + " " + IS + " " + point.method())
                        .collect(Collectors.joining("\n")));
        points.control().setFocus();
    }

    private Optional<ReleasePlan> said() {
        Optional<String> of = Typed.words(line);
        Optional<List<Point>> asked = points();
        return of.flatMap(name -> asked.map(list -> new ReleasePlan(name, list, "")));
    }

    /** Reads a point from each line; says which one is none. */
    private Optional<List<Point>> points() {
        points.hint(LedgerUiWords.get("plan.points-hint"));
        List<Point> read = new ArrayList<>();
        for (String each : points.control()
                .getText()
                .lines()
                .filter(text -> !text.isBlank())
                .toList()) {
            int is = each.lastIndexOf(IS);
            try {
                read.add(new Point(
                        each.substring(0, Math.max(0, is)).strip(),
                        new MethodId(each.substring(is + 1).strip())));
            } catch (IllegalArgumentException e) {
                is = -1;
            }
            if (is < 1) {
                points.complain(LedgerUiWords.get("plan.point", each.strip()));
                return Optional.empty();
            }
        }
        return Optional.of(read);
    }
}
