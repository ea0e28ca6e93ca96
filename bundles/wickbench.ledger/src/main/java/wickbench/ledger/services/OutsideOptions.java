package wickbench.ledger.services;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;
import wickbench.api.words.Coded;
import wickbench.ledger.acts.Outside;

/** What an outside laboratory reported, as it is typed; an amount has its unit and what it counts. */
final class OutsideOptions {
    @Option(names = "--laboratory", required = true, paramLabel = "NAME")
    private String laboratory;

    @Option(names = "--reference", required = true, paramLabel = "NUMBER")
    private String reference;

    @Option(names = "--sample", required = true, paramLabel = "LABEL")
    private String sample;

    @Option(names = "--target", required = true, paramLabel = "NAME")
    private String target;

    @Option(names = "--says", required = true, paramLabel = "detected|not-detected")
    private String says;

    @Option(names = "--amount", paramLabel = "NUMBER")
    private Optional<BigDecimal> amount = Optional.empty();

    @Option(names = "--unit", paramLabel = "UNIT")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--basis", paramLabel = "BASIS")
    private Optional<String> basis = Optional.empty();

    @Option(names = "--of-batch", paramLabel = "BATCH")
    private Optional<String> batch = Optional.empty();

    @Option(names = "--reported", required = true, paramLabel = "TIME")
    private String reported;

    /** @param results because of which the sample was sent */
    Outside report(List<UUID> results) {
        if (amount.isPresent() != unit.isPresent() || amount.isPresent() != basis.isPresent()) {
            throw new BadInput(Complaint.of("--amount", LedgerWords.get("outside.amount")));
        }
        Optional<Unit> in = unit.map(text -> ActCommands.parsed("--unit", text, Unit::ofSymbol));
        Optional<Basis> of =
                basis.map(text -> ActCommands.parsed("--basis", text, code -> Coded.of(Basis.class, code)));
        boolean detected = ActCommands.parsed("--says", says, OutsideOptions::detected);
        Instant at = instant(reported);
        return ActCommands.parsed(
                "--amount",
                reference,
                number -> new Outside(
                        laboratory,
                        number,
                        sample,
                        target,
                        detected,
                        amount.map(value -> new Quantity(value, in.orElseThrow())),
                        of,
                        batch,
                        results,
                        at));
    }

    static boolean detected(String text) {
        return switch (text) {
            case "detected" -> true;
            case "not-detected" -> false;
            default -> throw new IllegalArgumentException(LedgerWords.get("outside.says", text));
        };
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new BadInput(Complaint.of("--reported", LedgerWords.get("outside.time", text)));
        }
    }
}
