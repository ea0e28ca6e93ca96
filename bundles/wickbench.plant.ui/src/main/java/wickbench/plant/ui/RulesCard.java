package wickbench.plant.ui;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Composite;
import wickbench.plant.PlantState;
import wickbench.plant.programme.Programme.Held;
import wickbench.plant.programme.Rule;
import wickbench.plant.programme.Rule.When;
import wickbench.plant.site.Line;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.PlantTerms;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Type;

/**
 * The rules of the programme, line by line.
 *
 * @param chosen hears of which line a rule is to be stated, and which one anew
 */
record RulesCard(PageContext context, BiConsumer<String, Optional<Rule>> chosen) {

    void fill(Composite content, PlantState plant) {
        plant.lines().forEach(line -> line(content, plant, line));
    }

    private void line(Composite content, PlantState plant, Line line) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        controls.text(card, Type.STRONG, PlantUiWords.get("line.item", line.id(), line.name()));
        Composite grid = Fit.wide(controls.box(card, 2));
        plant.rules().stream()
                .map(Held::rule)
                .filter(rule -> rule.line().equals(line.id()))
                .forEach(rule -> {
                    controls.text(grid, Type.BODY, words(rule));
                    controls.buttonOfMany(
                            grid,
                            PlantUiWords.get("rule.change.open"),
                            () -> chosen.accept(line.id(), Optional.of(rule)));
                });
        controls.buttonOfMany(
                card, PlantUiWords.get("rule.new.open", line.id()), () -> chosen.accept(line.id(), Optional.empty()));
    }

    /** Returns a rule in a sentence. */
    static String words(Rule rule) {
        String when = rule.when() == When.PERIODIC
                ? PlantUiWords.get("rule.every", rule.everyDays())
                : PlantTerms.said("when." + rule.when().code());
        String only = rule.leaving().isEmpty() ? "" : PlantUiWords.get("rule.only", ChangeWords.names(rule.leaving()));
        String points = rule.points().isEmpty()
                ? PlantUiWords.get("rule.as-asked")
                : rule.points().stream().map(Samplings::words).collect(Collectors.joining("; "));
        return PlantUiWords.get("rule.says", rule.id(), when, only, rule.withinHours(), points);
    }
}
