package wickbench.people;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.ActWords;
import wickbench.api.authority.Signature;
import wickbench.api.authority.Signature.Standing;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;

/** {@code sign verify}: who signed what, and whether it was this. */
@Component(property = CommandSet.NAME + "=sign")
public final class SignCommand implements CommandSet {
    private final Journal journal;

    @Activate
    public SignCommand(@Reference Journal journal) {
        this.journal = journal;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Group(terminal);
    }

    @Command(name = "sign", synopsisSubcommandLabel = "COMMAND")
    private final class Group {
        private final Terminal terminal;

        Group(Terminal terminal) {
            this.terminal = terminal;
        }

        @Command(name = "verify")
        int verify(@Parameters(paramLabel = "ENTRY", arity = "0..1") String ref) {
            List<Signatures.Checked> checked = ref == null
                    ? Signatures.all(journal, terminal.progress(PeopleWords.get("verify.progress")))
                    : List.of(Signatures.of(entry(ref)));
            if (terminal.json()) {
                terminal.json(Json.array(checked.stream().map(Group::json).toList()));
            } else {
                checked.forEach(this::print);
                count(checked);
            }
            return checked.stream().anyMatch(Signatures.Checked::foreign) ? 1 : 0;
        }

        private Entry entry(String ref) {
            try {
                return journal.entry(EntryRef.parse(ref))
                        .orElseThrow(() -> new IllegalArgumentException(PeopleWords.get("verify.unknown", ref)));
            } catch (IllegalArgumentException e) {
                throw new BadInput(Complaint.of("ENTRY", e.getMessage()));
            }
        }

        private void print(Signatures.Checked checked) {
            Entry entry = checked.entry();
            if (checked.foreign()) {
                terminal.line(PeopleWords.get("verify.foreign", entry.ref(), entry.kind()));
            } else if (checked.signature() instanceof Standing.Signed signed) {
                Signature by = signed.signature();
                String meaning = ActWords.text(by.meaning());
                terminal.line(PeopleWords.get("verify.signed", entry.ref(), entry.kind(), by.by(), by.at(), meaning));
            } else {
                terminal.line(PeopleWords.get("verify.unsigned", entry.ref(), entry.kind()));
            }
            if (checked.witness() instanceof Standing.Signed signed) {
                Signature by = signed.signature();
                terminal.line("  " + PeopleWords.get("verify.witness", by.by(), by.at()));
            }
        }

        private void count(List<Signatures.Checked> checked) {
            long foreign = checked.stream().filter(Signatures.Checked::foreign).count();
            long signed = checked.stream()
                    .filter(each -> !each.foreign() && each.signature().signed())
                    .count();
            terminal.line(PeopleWords.get(
                    "verify.counts", checked.size(), signed, checked.size() - signed - foreign, foreign));
        }

        private static Json.Obj json(Signatures.Checked checked) {
            Json.Obj object = Json.object()
                    .with("entry", checked.entry().ref().toString())
                    .with("kind", checked.entry().kind())
                    .with("signed", checked.signature().signed())
                    .with("fits", !checked.foreign());
            if (checked.signature() instanceof Standing.Signed signed) {
                object = object.with(Signature.MEMBER, signed.signature().json());
            }
            return checked.witness() instanceof Standing.Signed second
                    ? object.with(Signature.WITNESS, second.signature().json())
                    : object;
        }
    }
}
