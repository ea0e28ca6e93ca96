package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.plant.Stated;
import wickbench.plant.programme.Rule;
import wickbench.plant.programme.Rule.When;
import wickbench.plant.site.Sampling;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.PlantTerms;
import wickbench.shell.ActForm;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** States a rule of the programme for a line: what makes it due, until when it is to be done, and what is sampled. */
final class RuleForm {
    private static final int WEEK = 7;
    private static final int DAY = 24;

    private final Stand stand;
    private final String line;
    private final ActForm form;
    private final Field<Text> id;
    private final Field<Combo> when;
    private final Field<Text> days;
    private final Field<Text> hours;
    private Ticks<String> leaving;
    private Ticks<Sampling> points;

    private RuleForm(Stand stand, String line, ActForm form, Optional<Rule> before) {
        this.stand = stand;
        this.line = line;
        this.form = form;
        id = form.text("rule.id", before.map(Rule::id).orElse(""));
        id.control().setEnabled(before.isEmpty());
        when = form.choice(
                "column.when",
                List.of(When.values()).stream()
                        .map(each -> PlantTerms.said("when." + each.code()))
                        .toList());
        when.control().select(before.map(Rule::when).orElse(When.CHANGEOVER).ordinal());
        form.field("rule.leaving", parent -> {
            leaving = new Ticks<>(
                    parent,
                    stand.context().theme(),
                    onLine(),
                    ChangeWords::name,
                    before.map(Rule::leaving).orElse(Set.of()));
            return leaving.control();
        });
        days = form.text(
                "rule.days", Integer.toString(before.map(Rule::everyDays).orElse(WEEK)));
        hours = form.text(
                "rule.hours", Integer.toString(before.map(Rule::withinHours).orElse(DAY)));
        form.field("rule.points", parent -> {
            points = Samplings.ticks(
                    parent, stand, line, before.map(Rule::points).orElse(List.of()));
            return points.control();
        });
        when.control().addListener(SWT.Selection, event -> fits());
        fits();
        form.act(
                "rule.act",
                stand.may().permission(),
                this::collect,
                news -> stand.said("rule.done", id.control().getText().strip()).accept(news));
    }

    static void open(Stand stand, String line, Optional<Rule> before) {
        stand.open(
                before.isPresent() ? "rule.change" : "rule.new",
                form -> new RuleForm(stand, line, form, before),
                line,
                before.map(Rule::id).orElse(""));
    }

    /** Every allergen that a product of the line holds, for only such can leave it. */
    private Set<String> onLine() {
        Set<String> held = new TreeSet<>();
        stand.plant().productsOf(line).forEach(product -> held.addAll(product.allergens()));
        return held;
    }

    private When chosen() {
        return When.values()[when.control().getSelectionIndex()];
    }

    /** What a kind of rule has no use for cannot be filled in. */
    private void fits() {
        days.control().setEnabled(chosen() == When.PERIODIC);
        Stream.of(leaving.control().getChildren()).forEach(tick -> tick.setEnabled(chosen().change()));
    }

    private Optional<Work<Integer>> collect() {
        Optional<String> named = Typed.words(id);
        Optional<Integer> every = Typed.whole(days, 1);
        Optional<Integer> within = Typed.whole(hours, 1);
        if (named.isEmpty() || every.isEmpty() || within.isEmpty()) {
            return Optional.empty();
        }
        if (points.chosen().isEmpty() && chosen() != When.CHANGEOVER) {
            form.refuse(PlantUiWords.get("rule.no-point"));
            return Optional.empty();
        }
        Set<String> only = chosen().change() ? Set.copyOf(leaving.chosen()) : Set.of();
        return stand.state(
                Stated.of(new Rule(named.get(), line, chosen(), only, every.get(), within.get(), points.chosen())));
    }
}
