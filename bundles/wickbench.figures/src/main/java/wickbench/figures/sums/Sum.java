package wickbench.figures.sums;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.check.Complaint;
import wickbench.figures.NoAnswer;

/**
 * A question with what it asks and how it is answered.
 *
 * @param id what it is called, on the command line and in entries; for good
 * @param version counted up when an answer to the same inputs changes
 * @param topic what it is about
 * @param inputs in the order in which they are asked
 */
public record Sum(String id, int version, Topic topic, List<Input> inputs, Function<Given, Answer> compute) {
    public Sum {
        inputs = List.copyOf(inputs);
    }

    static Sum of(String id, Topic topic, List<Input> inputs, Function<Given, Answer> compute) {
        return new Sum(id, 1, topic, inputs, compute);
    }

    /** Returns the question as a short title. */
    public String title() {
        return SumWords.get("sum." + id);
    }

    /** Says in a sentence what is answered. */
    public String line() {
        return SumWords.get("sum." + id + ".line");
    }

    /** Returns what an input is called, with its unit. */
    public String label(Input input) {
        return SumWords.own("input.", id, input.name());
    }

    /** Says what holds where an input may be left out and is; empty when it may not. */
    public Optional<String> hint(Input input) {
        if (input.needed() || input.usual().isPresent()) {
            return Optional.empty();
        }
        String own = "hint." + input.name();
        return Optional.of(SumWords.get(SumWords.has(own) ? own : "hint.optional"));
    }

    /** Returns what a member of the answer is called, with its unit. */
    public String name(String member) {
        return SumWords.own("name.", id, member);
    }

    /** Returns what a choice is called. */
    public String choice(Input input, String code) {
        return SumWords.get("choice." + input.name() + "." + code);
    }

    public Optional<Input> input(String name) {
        return inputs.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /** Returns the inputs as a page shows them at first. */
    public Given example() {
        return new Given(
                inputs.stream()
                        .filter(each -> !each.isTable() && !each.example().isEmpty())
                        .collect(Collectors.toMap(Input::name, Input::example)),
                inputs.stream()
                        .filter(each -> each.isTable() && !each.example().isEmpty())
                        .collect(Collectors.toMap(Input::name, each -> TableText.of(each.name(), each.example()))));
    }

    /** Leaves out what is not asked with these choices, as a form does that hides it. */
    public Given asked(Given given) {
        Given whole = completed(given);
        List<String> names = inputs.stream()
                .filter(each -> each.isAsked(whole))
                .map(Input::name)
                .toList();
        return new Given(only(given.texts(), names), only(given.tables(), names));
    }

    private static <T> Map<String, T> only(Map<String, T> all, List<String> names) {
        Map<String, T> some = new HashMap<>(all);
        some.keySet().retainAll(names);
        return some;
    }

    /** Puts the usual values in where nothing was given. */
    public Given completed(Given given) {
        return given.completed(inputs);
    }

    /** Answers, or says what is wrong; an input that is not given, or blank, counts as its usual value. */
    public Reckoned reckon(Given given) {
        Given whole = completed(given);
        try {
            whole.check(inputs);
            return new Reckoned.Done(whole, compute.apply(whole));
        } catch (Wrong wrong) {
            return wrong.told();
        } catch (NoAnswer none) {
            return refused(none, whole);
        }
    }

    /** A row names the table; without one, a field of a form comes before the table, and the table before everything. */
    private Reckoned refused(NoAnswer none, Given given) {
        Optional<Input> field = none.row().isPresent()
                ? Optional.empty()
                : inputs.stream()
                        .filter(each -> !each.isTable() && each.name().equals(none.field()))
                        .findFirst();
        if (field.isPresent()) {
            return new Reckoned.Wrong(none.field(), Complaint.of(none.field(), none.text()));
        }
        return inputs.stream()
                .filter(each -> given.tables().containsKey(each.name()))
                .findFirst()
                .map(table -> Table.refused(table.name(), given.tables().get(table.name()), none)
                        .told())
                .orElseGet(() -> new Reckoned.Wrong(
                        "", Complaint.of(none.field().isEmpty() ? SumWords.get("input") : none.field(), none.text())));
    }
}
