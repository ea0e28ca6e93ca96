package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.Input;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.TableText;

/**
 * The arguments of a sum's command.
 *
 * <p>Inputs with the same place are one argument: a control chart asks for one file, whatever stands in it. A choice that has a
 * table of its own takes that table's file instead of a code: {@code --weights FILE}.
 */
record Arguments(Sum sum) {
    private static final String OWN = "own";
    private static final String LARGE_L = "L";

    void addTo(CommandSpec spec) {
        List<String> places = places();
        for (int i = 0; i < places.size(); i++) {
            spec.addPositional(positional(places.get(i), i));
        }
        for (Input input : sum.inputs()) {
            if (input.argument().isEmpty() && !isOwnTable(input)) {
                spec.addOption(option(input));
            }
        }
    }

    Given given(ParseResult parsed) {
        Map<String, String> texts = new HashMap<>();
        Map<String, TableText> tables = new HashMap<>();
        for (Input input : sum.inputs()) {
            if (input.argument().isEmpty() && parsed.hasMatchedOption(option(input.name()))) {
                take(input, parsed.matchedOption(option(input.name())), texts, tables);
            }
        }
        Given options = sum.completed(new Given(texts, tables));
        List<String> places = places();
        for (Input input : sum.inputs()) {
            int place = input.argument().map(places::indexOf).orElse(-1);
            if (place >= 0 && parsed.hasMatchedPositional(place) && input.isAsked(options)) {
                take(input, parsed.matchedPositional(place), texts, tables);
            }
        }
        return new Given(texts, tables);
    }

    private void take(Input input, ArgSpec from, Map<String, String> texts, Map<String, TableText> tables) {
        if (input.isTable()) {
            tables.put(input.name(), TableFile.read(from.getValue()));
        } else if (input.kind() instanceof Input.Kind.Flag) {
            texts.put(input.name(), "yes");
        } else {
            String text =
                    from.originalStringValues().get(from.originalStringValues().size() - 1);
            if (hasOwnTable(input) && !codes(input).contains(text)) {
                texts.put(input.name(), OWN);
                tables.put(own(input), TableFile.read(from.getValue()));
            } else {
                texts.put(input.name(), text);
            }
        }
    }

    private List<String> places() {
        Set<String> places = new LinkedHashSet<>();
        sum.inputs().forEach(input -> input.argument().ifPresent(places::add));
        return List.copyOf(places);
    }

    private PositionalParamSpec positional(String place, int index) {
        List<Input> inputs = sum.inputs().stream()
                .filter(input -> input.argument().filter(place::equals).isPresent())
                .toList();
        return PositionalParamSpec.builder()
                .index(String.valueOf(index))
                .arity("1")
                .paramLabel(place)
                .type(inputs.get(0).isTable() ? Path.class : String.class)
                .description(SumCommand.literal(
                        inputs.stream().map(this::description).collect(Collectors.joining("; "))))
                .build();
    }

    private OptionSpec option(Input input) {
        boolean flag = input.kind() instanceof Input.Kind.Flag;
        OptionSpec.Builder option = OptionSpec.builder(names(input))
                .required(input.needed() && input.only().isEmpty())
                .description(SumCommand.literal(description(input)));
        return flag
                ? option.build()
                : option.arity("1")
                        .type(input.isTable() || hasOwnTable(input) ? Path.class : String.class)
                        .paramLabel(label(input))
                        .build();
    }

    /** The width of limits is called L in the handbooks and by a word here. */
    private static String[] names(Input input) {
        String name = option(input.name());
        return input.name().equals(LARGE_L) ? new String[] {name, "--width"} : new String[] {name};
    }

    private String description(Input input) {
        String label = sum.label(input);
        if (input.kind() instanceof Input.Kind.Rows rows && !rows.columns().isEmpty()) {
            return label + ": " + String.join(",", rows.columns());
        }
        String usual = input.kind() instanceof Input.Kind.Flag
                ? ""
                : input.usual()
                        .or(() -> sum.hint(input))
                        .map(text -> " [" + text + "]")
                        .orElse("");
        return input.kind() instanceof Input.Kind.Choice
                ? label + ": " + String.join(", ", codes(input)) + usual
                : label + usual;
    }

    private String label(Input input) {
        if (hasOwnTable(input)) {
            return String.join("|", codes(input)) + "|FILE";
        }
        if (input.isTable()) {
            return "FILE";
        }
        return input.kind() instanceof Input.Kind.Choice ? "NAME" : "X";
    }

    private List<String> codes(Input input) {
        List<String> codes = ((Input.Kind.Choice) input.kind()).codes();
        return hasOwnTable(input)
                ? codes.stream().filter(code -> !code.equals(OWN)).toList()
                : codes;
    }

    private boolean hasOwnTable(Input input) {
        return input.kind() instanceof Input.Kind.Choice
                && sum.input(own(input)).isPresent();
    }

    private boolean isOwnTable(Input input) {
        return input.isTable()
                && input.only().filter(only -> only.codes().equals(Set.of(OWN))).isPresent();
    }

    private static String own(Input input) {
        return OWN + "-" + input.name();
    }

    private static String option(String name) {
        return "--" + name;
    }
}
