package wickbench.bench.verify;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Methods;
import wickbench.api.person.PersonId;
import wickbench.bench.evidence.MethodPapers;
import wickbench.bench.evidence.Verification;
import wickbench.bench.evidence.Verifications;
import wickbench.bench.evidence.Verifications.Verified;

/** {@code method verify}, {@code evidence}, {@code lapse} and {@code card}. */
public abstract class EvidenceCommands {
    private final Methods methods;
    private final Verifications verifications;
    private final MethodPapers papers;
    private final Terminal terminal;

    protected EvidenceCommands(Methods methods, Verifications verifications, MethodPapers papers, Terminal terminal) {
        this.methods = methods;
        this.verifications = verifications;
        this.papers = papers;
        this.terminal = terminal;
    }

    @Command(name = "verify")
    public int verify(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--food", paramLabel = "TEXT") Optional<String> food,
            @Option(names = "--surface", paramLabel = "TEXT") Optional<String> surface,
            @Option(names = "--cleaner", paramLabel = "TEXT") Optional<String> cleaner,
            @Option(names = "--evidence", paramLabel = "ENTRY") List<String> evidence,
            @Option(names = "--remark", paramLabel = "TEXT") Optional<String> remark,
            @Option(names = "--sign") boolean sign) {
        MethodId method = parsed("ID", id, MethodId::new);
        PersonId by = terminal.actorOrRefuse();
        List<EntryRef> shown = Optional.ofNullable(evidence).orElse(List.of()).stream()
                .map(text -> parsed("--evidence", text, EntryRef::parse))
                .toList();
        Verification what = new Verification(newest(method), food, surface, cleaner, shown, remark);
        EntryRef entry = verifications.verify(what, by, passphrase(by, sign));
        terminal.note(VerifyWords.get("done", what.method(), what.what(), entry));
        return 0;
    }

    @Command(name = "evidence")
    public int evidence(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--out", paramLabel = "FILE.pdf") Optional<Path> out) {
        if (out.isPresent()) {
            papers.print(papers.evidence(parsed("ID", id, MethodId::new)), out.get());
            terminal.note(VerifyWords.get("printed", out.get()));
            return 0;
        }
        List<Verified> all = verifications.of(parsed("ID", id, MethodId::new));
        if (terminal.json()) {
            terminal.json(Json.array(all.stream().map(EvidenceCommands::json).toList()));
        } else if (all.isEmpty()) {
            terminal.line(VerifyWords.get("none", id));
        } else {
            terminal.table(
                    List.of(
                            VerifyWords.get("column.entry"),
                            VerifyWords.get("column.version"),
                            VerifyWords.get("column.what"),
                            VerifyWords.get("column.by"),
                            VerifyWords.get("column.state")),
                    all.stream().map(EvidenceCommands::row).toList());
        }
        return 0;
    }

    @Command(name = "card")
    public int card(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--out", required = true, paramLabel = "FILE.pdf") Path out) {
        papers.print(papers.card(parsed("ID", id, MethodId::new)), out);
        terminal.note(VerifyWords.get("printed", out));
        return 0;
    }

    @Command(name = "lapse")
    public int lapse(
            @Parameters(paramLabel = "ENTRY") String entry,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        EntryRef verified = parsed("ENTRY", entry, EntryRef::parse);
        PersonId by = terminal.actorOrRefuse();
        verifications.end(verified, reason, by, passphrase(by, sign));
        terminal.note(VerifyWords.get("ended", verified));
        return 0;
    }

    private MethodRef newest(MethodId method) {
        return methods.versions(method).stream()
                .map(issued -> issued.method().ref())
                .reduce((older, newer) -> newer)
                .orElseThrow(() -> new BadInput(Complaint.of("ID", VerifyWords.get("unknown", method))));
    }

    private Optional<Passphrase> passphrase(PersonId by, boolean sign) {
        return sign ? Optional.of(Passphrase.of(terminal.passphrase(by.value()))) : Optional.empty();
    }

    private static List<String> row(Verified each) {
        return List.of(
                each.entry().toString(),
                String.valueOf(each.what().method().version()),
                each.what().what(),
                each.by().value(),
                each.ended()
                        .map(end -> VerifyWords.get("state.ended", end.at(), end.reason()))
                        .orElseGet(() -> VerifyWords.get("state.holds")));
    }

    private static Json json(Verified each) {
        return each.what()
                .body()
                .with("entry", each.entry().toString())
                .with("at", each.at().toString())
                .with("by", each.by().value())
                .with("signed", each.signed())
                .withOptional(
                        "ended",
                        each.ended()
                                .map(end -> Json.object()
                                        .with("at", end.at().toString())
                                        .with("by", end.by().value())
                                        .with("reason", end.reason())));
    }

    private static <T> T parsed(String name, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(name, e.getMessage()));
        }
    }
}
