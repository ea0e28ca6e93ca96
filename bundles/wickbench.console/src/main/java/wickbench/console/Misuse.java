package wickbench.console;

import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import wickbench.api.words.Words;

/** Says in the language of the program what is wrong with the arguments of a call; the library knows only English. */
final class Misuse {
    private static final Words WORDS = Words.of(Misuse.class, "console");

    private Misuse() {}

    static String of(ParameterException misuse) {
        if (misuse instanceof UnmatchedArgumentException odd && !odd.getUnmatched().isEmpty()) {
            return WORDS.get("misuse.unmatched", String.join(" ", odd.getUnmatched()));
        }
        if (misuse instanceof MissingParameterException lacking
                && !lacking.getMissing().isEmpty()) {
            return WORDS.get(
                    "misuse.missing",
                    lacking.getMissing().stream().map(Misuse::name).collect(Collectors.joining(", ")));
        }
        if (misuse.getCause() instanceof TypeConversionException wrong && misuse.getArgSpec() != null) {
            return WORDS.get("misuse.value", name(misuse.getArgSpec()), misuse.getValue(), wrong.getMessage());
        }
        return misuse.getMessage();
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
