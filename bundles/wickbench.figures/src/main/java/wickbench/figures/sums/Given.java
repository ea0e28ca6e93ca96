package wickbench.figures.sums;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * What a person gives to a sum.
 *
 * @param texts by the name of their input, as typed; a decimal comma is understood, a flag is {@code yes} or {@code no}
 * @param tables by the name of their input
 */
public record Given(Map<String, String> texts, Map<String, TableText> tables) {
    private static final int LARGEST_POWER = 30;

    public Given {
        texts = Map.copyOf(texts);
        tables = Map.copyOf(tables);
    }

    /** Returns what was typed; empty when nothing was. */
    public Optional<String> text(String name) {
        return Optional.ofNullable(texts.get(name)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** Puts in the usual values of what is asked and not given, and leaves blank texts and empty tables out. */
    Given completed(List<Input> inputs) {
        Map<String, String> whole = new HashMap<>();
        texts.forEach((name, text) -> text(name).ifPresent(some -> whole.put(name, some)));
        for (Input input : inputs) {
            if (input.isAsked(new Given(whole, Map.of()))) {
                input.usual().ifPresent(usual -> whole.putIfAbsent(input.name(), usual));
            }
        }
        Map<String, TableText> filled = new HashMap<>(tables);
        filled.values()
                .removeIf(table -> table.source().isEmpty() && table.lines().isEmpty());
        return new Given(whole, filled);
    }

    /** Refuses what is needed and absent, given and not asked, or of another kind. */
    void check(List<Input> inputs) {
        for (Input input : inputs) {
            String name = input.name();
            boolean given = texts.containsKey(name) || tables.containsKey(name);
            if (given && !input.isAsked(this)) {
                throw Wrong.of(
                        name,
                        "input.not-with",
                        text(input.only().orElseThrow().input()).orElse(""));
            }
            if (!given && input.needed() && input.isAsked(this)) {
                throw Wrong.of(name, "input.needed");
            }
            if (texts.containsKey(name)) {
                check(input);
            }
        }
    }

    private void check(Input input) {
        String name = input.name();
        if (input.kind() instanceof Input.Kind.Choice choice) {
            coded(name, choice.codes().toArray(String[]::new), Function.identity());
        } else if (input.kind() instanceof Input.Kind.Flag) {
            coded(name, new String[] {"yes", "no"}, Function.identity());
        } else if (input.kind() instanceof Input.Kind.Numbers) {
            numbers(name);
        } else if (input.kind() instanceof Input.Kind.Decimal) {
            quantity(name);
        } else if (!(input.kind() instanceof Input.Kind.Words)) {
            number(name);
        }
    }

    /** Beyond these powers of ten nothing is weighed or measured. */
    private void quantity(String name) {
        BigDecimal value = decimal(name);
        if (value.signum() != 0 && Math.abs((long) value.precision() - value.scale()) > LARGEST_POWER) {
            throw Wrong.of(name, "input.out-of-range", LARGEST_POWER, text(name).orElse(""));
        }
    }

    boolean has(String name) {
        return texts.containsKey(name);
    }

    double number(String name) {
        double value = decimal(name).doubleValue();
        return Inputs.finite(name, value);
    }

    Optional<Double> optional(String name) {
        return has(name) ? Optional.of(number(name)) : Optional.empty();
    }

    BigDecimal decimal(String name) {
        String text = text(name).orElseThrow(() -> Wrong.of(name, "input.needed"));
        return Numbers.of(text).orElseThrow(() -> Wrong.of(name, "input.not-a-number", text));
    }

    Optional<BigDecimal> optionalDecimal(String name) {
        return has(name) ? Optional.of(decimal(name)) : Optional.empty();
    }

    /** Returns a whole number of any sign; what it may be is the sum's to say. */
    long count(String name) {
        try {
            return decimal(name).longValueExact();
        } catch (ArithmeticException e) {
            throw NoAnswer.of(name, "count.expected", Inputs.LARGEST_COUNT, texts.get(name));
        }
    }

    int whole(String name) {
        try {
            return decimal(name).intValueExact();
        } catch (ArithmeticException e) {
            throw NoAnswer.of(name, "whole.expected", 0, Integer.MAX_VALUE, texts.get(name));
        }
    }

    Optional<Integer> optionalWhole(String name) {
        return has(name) ? Optional.of(whole(name)) : Optional.empty();
    }

    boolean flag(String name) {
        return text(name).filter("yes"::equals).isPresent();
    }

    double[] numbers(String name) {
        return Arrays.stream(Numbers.parts(text(name).orElse("")))
                .mapToDouble(part -> Inputs.finite(
                        name,
                        Numbers.of(part)
                                .orElseThrow(() -> Wrong.of(name, "input.not-a-number", part))
                                .doubleValue()))
                .toArray();
    }

    /** Returns the choice with this code. */
    <T> T coded(String name, T[] values, Function<T, String> codes) {
        String code = text(name).orElse("");
        return Arrays.stream(values)
                .filter(value -> codes.apply(value).equals(code))
                .findFirst()
                .orElseThrow(() -> Wrong.of(
                        name,
                        "choice.expected",
                        String.join(", ", Arrays.stream(values).map(codes).toList()),
                        code));
    }

    /** Returns the numbers of a table by their columns. */
    Table table(String name, String... columns) {
        return new TableReader(name, cells(name)).table(List.of(columns));
    }

    TableText cells(String name) {
        return Optional.ofNullable(tables.get(name)).orElseThrow(() -> Wrong.of(name, "input.needed"));
    }

    boolean hasTable(String name) {
        return tables.containsKey(name);
    }
}
