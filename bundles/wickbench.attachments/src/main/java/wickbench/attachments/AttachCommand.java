package wickbench.attachments;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.attachment.Attachment;
import wickbench.api.attachment.AttachmentState;
import wickbench.api.attachment.Attachments;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.words.Words;

/** Adding files to entries, listing them, getting them back, and proving them. */
@Command(name = "attach", synopsisSubcommandLabel = "COMMAND")
final class AttachCommand {
    private static final int FOUND_WANTING = 1;
    private final Attachments attachments;
    private final Index index;
    private final Terminal terminal;
    private final AttachPrint print;
    private final Words words = Words.of(AttachCommand.class, "attachments");

    AttachCommand(Attachments attachments, Index index, Terminal terminal) {
        this.attachments = attachments;
        this.index = index;
        this.terminal = terminal;
        print = new AttachPrint(attachments, terminal, words);
    }

    @Command(name = "add")
    int add(
            @Parameters(paramLabel = "FILE") Path file,
            @Option(names = "--to", required = true, paramLabel = "ENTRY") String entry) {
        EntryRef about = entry(entry);
        try (InputStream content = Files.newInputStream(file)) {
            Attachments.Kept kept =
                    attachments.add(content, file.getFileName().toString(), about, terminal.actorOrRefuse());
            print.list(List.of(kept.attachment()));
            if (!kept.added()) {
                terminal.note(words.get("attachment.known", kept.attachment().entry()));
            }
            return 0;
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), words.get("file.unreadable", reason(e))));
        }
    }

    @Command(name = "list")
    int list(@Parameters(paramLabel = "ENTRY") String entry) {
        List<Attachment> found = attachments.of(entry(entry));
        print.list(found);
        return 0;
    }

    @Command(name = "get")
    int get(
            @Parameters(paramLabel = "SHA256") String sha256,
            @Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
        Hash content = parsed("SHA256", sha256, Hash::new);
        try (InputStream in = attachments.open(content)) {
            Path written = new NewFile(words)
                    .write(in, out, attachments.with(content).get(0).name());
            terminal.line(words.get("file.written", written));
            return 0;
        } catch (IOException e) {
            throw new BadInput(Complaint.of(out.toString(), words.get("file.unwritable", reason(e))));
        }
    }

    @Command(name = "verify")
    int verify() {
        Map<Hash, AttachmentState> states = attachments.verify(terminal.progress(words.get("verifying")));
        print.states(states);
        return states.values().stream().allMatch(AttachmentState.WHOLE::equals) ? 0 : FOUND_WANTING;
    }

    private EntryRef entry(String text) {
        if (text.indexOf(':') >= 0) {
            return parsed("ENTRY", text, EntryRef::parse);
        }
        return index.find(parsed("ENTRY", text, UUID::fromString))
                .orElseThrow(() -> new BadInput(Complaint.of(text, words.get("attachment.no-entry"))));
    }

    private static <T> T parsed(String what, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(what, e.getMessage()));
        }
    }

    /** The reason without the path, which the complaint names already. */
    private static String reason(IOException e) {
        return e instanceof java.nio.file.FileSystemException file && file.getReason() != null
                ? file.getReason()
                : e.getClass().getSimpleName();
    }
}
