package wickbench.plant.terms;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.Fault;
import wickbench.plant.changeover.Leaving;
import wickbench.plant.changeover.Way;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Form;

/** Says in words what a change asks for; the same on the screen and on the command line. */
public final class ChangeWords {
    private ChangeWords() {}

    /** Returns the name of an allergen, for example hazelnut. */
    public static String name(String allergen) {
        return PlantWords.get("allergen." + allergen);
    }

    /** Returns names in their order, parted by commas. */
    public static String names(Collection<String> allergens) {
        return allergens.stream().sorted().map(ChangeWords::name).collect(Collectors.joining(", "));
    }

    /** Returns a change in a word or two: its minutes, or why it must not be made. */
    public static String cell(Changeover change) {
        if (change.from().id().equals(change.to().id())) {
            return "·";
        }
        if (!change.allowed()) {
            return PlantWords.get("fault." + change.faults().get(0).code());
        }
        return change.tested()
                ? PlantWords.get("cell.tested", change.minutes(), strips(change))
                : PlantWords.get("cell.plain", change.minutes());
    }

    /** Counts the strips that a change takes, of the pool those to be drawn. */
    public static long strips(Changeover change) {
        return change.tests().stream().filter(test -> !test.drawn()).count() + change.draw();
    }

    /** Returns what a change asks for and why, a sentence a line; what forbids it first. */
    public static List<String> explain(Changeover change) {
        List<String> lines = new ArrayList<>();
        lines.add(
                PlantWords.get("change.title", change.from().name(), change.to().name(), change.line()));
        change.faults().forEach(fault -> lines.add(fault(change, fault)));
        if (change.faults().contains(Fault.NOT_STATED)) {
            return lines;
        }
        if (!change.tested()) {
            lines.add(PlantWords.get("change.nothing-leaves", change.minutes()));
            return lines;
        }
        change.leaving().forEach(leaving -> lines.addAll(leaving(leaving)));
        change.clean().ifPresent(clean -> lines.add(clean(clean)));
        if (change.draw() > 0) {
            lines.add(PlantWords.get("change.draw", change.draw()));
        }
        lines.add(PlantWords.get(
                "change.takes", change.minutes(), change.minutes() - change.testMinutes(), change.testMinutes()));
        return lines;
    }

    private static String fault(Changeover change, Fault fault) {
        String facts = switch (fault) {
            case NOT_STATED ->
                List.of(change.from(), change.to()).stream()
                        .filter(product -> !product.stated())
                        .map(product -> product.name())
                        .distinct()
                        .collect(Collectors.joining(", "));
            case DISPUTED -> String.join(", ", change.disputed());
            case UNCOVERED ->
                change.uncovered().stream().map(leaving -> held(leaving.held())).collect(Collectors.joining(", "));
            case NO_POINT ->
                change.leaving().stream()
                        .filter(leaving -> leaving.covered() && !leaving.tested())
                        .map(leaving -> held(leaving.held()))
                        .collect(Collectors.joining(", "));
            case NO_CLEAN -> names(change.allergens());
            case NOT_VALIDATED -> change.clean().map(each -> each.clean().id()).orElse("");
        };
        return PlantWords.get("must-not." + fault.code(), facts, change.line());
    }

    private static List<String> leaving(Leaving leaving) {
        List<String> lines = new ArrayList<>();
        String seeing = methods(leaving.ways().stream().filter(Way::sees).toList());
        String held = held(leaving.held());
        lines.add(
                seeing.isEmpty()
                        ? PlantWords.get("leaving.uncovered", held)
                        : PlantWords.get("leaving.covered", held, seeing));
        leaving.ways().stream()
                .filter(way -> !way.sees())
                .forEach(way ->
                        lines.add(PlantWords.get("leaving.blind", way.method(), String.join(", ", way.notSeen()))));
        if (leaving.held().part().isEmpty()) {
            leaving.ways().stream()
                    .filter(way -> way.sees() && !way.notSeen().isEmpty())
                    .map(way -> String.join(", ", way.notSeen()))
                    .distinct()
                    .forEach(blind -> lines.add(
                            PlantWords.get("leaving.part", name(leaving.held().allergen()), blind)));
        }
        if (leaving.held().form() == Form.PARTICULATE) {
            lines.add(PlantWords.get("leaving.particulate", name(leaving.held().allergen())));
        }
        return lines;
    }

    private static String methods(List<Way> ways) {
        return ways.stream().map(way -> way.method().toString()).collect(Collectors.joining(", "));
    }

    /** Returns an allergen with the form it comes in, for example milk (whey protein, powder). */
    public static String held(Contained held) {
        String form = PlantWords.get("form." + held.form().code());
        return held.part()
                .map(part -> PlantWords.get("held.part", name(held.allergen()), part, form))
                .orElseGet(() -> PlantWords.get("held", name(held.allergen()), form));
    }

    private static String clean(Validation clean) {
        return PlantWords.get(
                "change.clean",
                clean.clean().id(),
                clean.clean().name(),
                clean.clean().minutes(),
                PlantWords.get("validity." + clean.state().code()),
                clean.until().map(day -> PlantWords.get("validity.until", day)).orElse(""));
    }
}
