package wickbench.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.method.Methods.Withdrawal;
import wickbench.api.person.PersonId;
import wickbench.bench.evidence.MethodPapers;
import wickbench.bench.evidence.Verifications;
import wickbench.bench.verify.EvidenceCommands;
import wickbench.reading.MethodJson;

/** {@code method}: check a file, issue it, withdraw, list, show; and what it was verified for. */
@Component(property = CommandSet.NAME + "=method")
public final class MethodCommand implements CommandSet {
    private final Methods methods;
    private final Verifications verifications;
    private final MethodPapers papers;

    @Activate
    public MethodCommand(
            @Reference Methods methods, @Reference Verifications verifications, @Reference MethodPapers papers) {
        this.methods = methods;
        this.verifications = verifications;
        this.papers = papers;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Group(terminal);
    }

    @Command(name = "method", synopsisSubcommandLabel = "COMMAND")
    private final class Group extends EvidenceCommands {
        private final Terminal terminal;

        Group(Terminal terminal) {
            super(methods, verifications, papers, terminal);
            this.terminal = terminal;
        }

        @Command(name = "check")
        int check(@Parameters(paramLabel = "FILE.json") Path file) {
            Method method = methods.read(file).orRefuse();
            terminal.line(BenchWords.get("method.good", method.ref(), method.title()));
            return 0;
        }

        @Command(name = "issue")
        int issue(
                @Parameters(paramLabel = "FILE.json", arity = "1..*") List<Path> files,
                @Option(names = "--sign") boolean sign) {
            List<Method> read =
                    files.stream().map(file -> methods.read(file).orRefuse()).toList();
            PersonId by = terminal.actorOrRefuse();
            Optional<Passphrase> passphrase = passphrase(sign, by);
            for (Method method : read) {
                IssuedMethod issued = methods.issue(method, by, passphrase);
                terminal.note(BenchWords.get(
                        issued.signed() ? "method.issued-signed" : "method.issued",
                        issued.method().ref(),
                        issued.from()));
            }
            return 0;
        }

        @Command(name = "withdraw")
        int withdraw(
                @Parameters(paramLabel = "ID") String id,
                @Option(names = "--reason", required = true) String reason,
                @Option(names = "--sign") boolean sign) {
            PersonId by = terminal.actorOrRefuse();
            methods.withdraw(known(id), reason, by, passphrase(sign, by));
            terminal.note(BenchWords.get(sign ? "method.withdrawn-signed" : "method.withdrawn", id));
            return 0;
        }

        @Command(name = "list")
        int list() {
            List<IssuedMethod> all = methods.all();
            if (terminal.json()) {
                terminal.json(Json.array(all.stream().map(Group::summary).toList()));
            } else {
                terminal.table(
                        MethodPrint.header(), all.stream().map(MethodPrint::row).toList());
            }
            return 0;
        }

        @Command(name = "show")
        int show(@Parameters(paramLabel = "ID") String id) {
            List<IssuedMethod> versions = methods.versions(known(id));
            IssuedMethod newest = versions.get(versions.size() - 1);
            if (terminal.json()) {
                terminal.json(MethodJson.write(newest.method()));
            } else {
                MethodPrint.page(newest).forEach(terminal::line);
            }
            return 0;
        }

        private Optional<Passphrase> passphrase(boolean sign, PersonId by) {
            return sign ? Optional.of(Passphrase.of(terminal.passphrase(by.value()))) : Optional.empty();
        }

        private MethodId known(String id) {
            try {
                MethodId known = new MethodId(id);
                if (!methods.versions(known).isEmpty()) {
                    return known;
                }
            } catch (IllegalArgumentException e) {
                throw new BadInput(Complaint.of(id, e.getMessage()));
            }
            throw new BadInput(Complaint.of(id, BenchWords.get("method.unknown", id)));
        }

        private static Json.Obj summary(IssuedMethod issued) {
            return MethodJson.write(issued.method())
                    .with("from", issued.from().toString())
                    .withText("until", issued.until().map(Object::toString))
                    .with("issued_by", issued.by().value())
                    .with("signed", issued.signed())
                    .withOptional("withdrawal", issued.withdrawal().map(Group::withdrawal));
        }

        private static Json withdrawal(Withdrawal withdrawal) {
            return Json.object()
                    .with("by", withdrawal.by().value())
                    .with("reason", withdrawal.reason())
                    .with("signed", withdrawal.signed());
        }
    }
}
