package wickbench.ledger.services;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;
import wickbench.ledger.Filter;

/** Which results, as the command line says it. */
final class FilterOptions {
    @Option(names = "--from", paramLabel = "DATE")
    private Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DATE")
    private Optional<LocalDate> to = Optional.empty();

    @Option(names = "--outcome", paramLabel = "OUTCOME")
    private Optional<String> outcome = Optional.empty();

    @Option(names = "--place", paramLabel = "PLACE")
    private Optional<String> place = Optional.empty();

    @Option(names = "--line", paramLabel = "LINE")
    private Optional<String> line = Optional.empty();

    @Option(names = "--batch", paramLabel = "BATCH")
    private Optional<String> batch = Optional.empty();

    @Option(names = "--method", paramLabel = "ID")
    private Optional<String> method = Optional.empty();

    @Option(names = "--target", paramLabel = "NAME")
    private Optional<String> target = Optional.empty();

    @Option(names = "--operator", paramLabel = "PERSON")
    private Optional<String> operator = Optional.empty();

    @Option(names = "--lot", paramLabel = "LOT")
    private Optional<String> lot = Optional.empty();

    @Option(names = "--text", paramLabel = "TEXT")
    private Optional<String> text = Optional.empty();

    @Option(names = "--held")
    private boolean held;

    @Option(names = "--in-doubt")
    private boolean inDoubt;

    @Option(names = "--unreviewed")
    private boolean unreviewed;

    Filter filter() {
        if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
            throw new BadInput(Complaint.of("--to", LedgerWords.get("to.before-from", to.get(), from.get())));
        }
        return new Filter(
                from,
                to,
                parsed("--outcome", outcome, code -> Coded.of(Outcome.class, code)),
                place,
                line,
                batch,
                parsed("--method", method, MethodId::new),
                target,
                parsed("--operator", operator, PersonId::new),
                parsed("--lot", lot, LotId::new),
                text,
                held,
                inDoubt,
                unreviewed);
    }

    private static <T> Optional<T> parsed(String option, Optional<String> given, Function<String, T> parse) {
        try {
            return given.map(parse);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(option, e.getMessage()));
        }
    }
}
