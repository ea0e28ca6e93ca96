package wickbench.figures.ui;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import wickbench.figures.NoAnswer;

/**
 * What was typed into the form of a sum.
 *
 * @param texts by the name of their field
 */
record Given(Map<String, String> texts) {
    private static final Pattern NUMBER = Pattern.compile("-?(\\d+\\.?\\d*|\\.\\d+)([eE]-?\\d{1,3})?");

    Given {
        texts = Map.copyOf(texts);
    }

    double number(String name) {
        return optional(name).orElseThrow(() -> NoAnswer.of(name, "number.expected", ""));
    }

    int whole(String name) {
        double value = number(name);
        if (value != (int) value) {
            throw NoAnswer.of(name, "whole.expected", 0, Integer.MAX_VALUE, texts.get(name));
        }
        return (int) value;
    }

    /** Returns a number that may be left out; a decimal comma is understood. */
    Optional<Double> optional(String name) {
        String text = texts.getOrDefault(name, "").strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String plain = text.replace(',', '.');
        if (!NUMBER.matcher(plain).matches()) {
            throw NoAnswer.of(name, "number.expected", text);
        }
        return Optional.of(Double.valueOf(plain));
    }

    Optional<Integer> optionalWhole(String name) {
        return optional(name).map(value -> whole(name));
    }
}
