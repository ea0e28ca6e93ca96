package wickbench.parts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.check.Refusal;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.part.Brings;
import wickbench.api.part.Health;
import wickbench.api.part.PartSet;
import wickbench.api.progress.Progress;
import wickbench.api.words.Language;
import wickbench.parts.plan.SetId;
import wickbench.parts.words.PartsWords;

/** What there is to say of sets, for people and for machines. */
final class PartsPrint {
    private final Terminal terminal;

    PartsPrint(Terminal terminal) {
        this.terminal = terminal;
    }

    Progress progress() {
        return terminal.progress(PartsWords.get("taking-in"));
    }

    void list(List<PartSet> sets) {
        if (terminal.json()) {
            terminal.json(Json.array(sets.stream().map(PartsPrint::json).toList()));
            return;
        }
        terminal.table(
                List.of(
                        PartsWords.get("column.set"),
                        PartsWords.get("column.version"),
                        PartsWords.get("column.standing"),
                        PartsWords.get("column.brings")),
                sets.stream()
                        .map(set -> List.of(
                                set.name(),
                                set.version(),
                                PartsWords.get("standing." + set.standing().code()),
                                set.trouble().orElseGet(() -> brings(set.brings()))))
                        .toList());
    }

    void good(PartSet set) {
        if (terminal.json()) {
            terminal.json(json(set).with("good", true));
        } else {
            terminal.line(PartsWords.get(
                    "good", set.title(), set.version(), set.maker().orElse("")));
        }
    }

    void wanting(Refusal refused) {
        if (terminal.json()) {
            terminal.json(Json.object()
                    .with("good", false)
                    .with("code", refused.code())
                    .with("reason", refused.getMessage()));
        } else {
            terminal.note(refused.getMessage());
        }
    }

    void added(PartSet set) {
        if (terminal.json()) {
            terminal.json(json(set));
        } else {
            terminal.line(PartsWords.get("added", set.title(), set.version(), brings(set.brings())));
        }
    }

    void removed(PartSet set) {
        if (terminal.json()) {
            terminal.json(Json.object().with("removed", set.name()).with("version", set.version()));
        } else {
            terminal.line(PartsWords.get("removed", set.title(), set.version()));
        }
    }

    void health(List<Health> found) {
        if (terminal.json()) {
            terminal.json(Json.array(found.stream()
                    .map(each -> Json.object()
                            .with("of", each.of().code())
                            .with("state", each.state().code())
                            .with("text", each.text()))
                    .toList()));
            return;
        }
        terminal.table(
                List.of(
                        PartsWords.get("column.checked"),
                        PartsWords.get("column.standing"),
                        PartsWords.get("column.found")),
                found.stream()
                        .map(each -> List.of(
                                PartsWords.get("health.of." + each.of().code()),
                                PartsWords.get("health.state." + each.state().code()),
                                each.text()))
                        .toList());
    }

    void packed(SetId id, Path out, byte[] archive) {
        Hash hash = Hash.ofContent(archive);
        if (terminal.json()) {
            terminal.json(Json.object()
                    .with("name", id.name())
                    .with("version", id.version().toString())
                    .with("file", out.toString())
                    .with("bytes", archive.length)
                    .with("sha256", hash.toString()));
        } else {
            terminal.line(PartsWords.get("packed", id, out, hash));
        }
    }

    void key(Path secret, Path open) {
        if (terminal.json()) {
            terminal.json(Json.object().with("secret", secret.toString()).with("open", open.toString()));
        } else {
            terminal.line(PartsWords.get("key", secret, open));
        }
    }

    private static Json.Obj json(PartSet set) {
        return Json.object()
                .with("name", set.name())
                .with("version", set.version())
                .with("title", set.title())
                .with("description", set.description())
                .with("requires", Json.texts(set.requires()))
                .with("standing", set.standing().code())
                .with("pages", Json.texts(set.brings().pages()))
                .with("commands", Json.texts(set.brings().commands()))
                .with("gates", set.brings().gates())
                .with("views", set.brings().views())
                .with("languages", Json.texts(set.brings().languages()))
                .withText("maker", set.maker())
                .withText("trouble", set.trouble());
    }

    private static String brings(Brings brings) {
        List<String> words = new ArrayList<>();
        if (!brings.pages().isEmpty()) {
            words.add(PartsWords.get("brings.pages", String.join(", ", brings.pages())));
        }
        if (!brings.commands().isEmpty()) {
            words.add(PartsWords.get("brings.commands", String.join(", ", brings.commands())));
        }
        if (brings.gates() > 0) {
            words.add(PartsWords.get("brings.gates", brings.gates()));
        }
        if (brings.views() > 0) {
            words.add(PartsWords.get("brings.views", brings.views()));
        }
        for (String code : brings.languages()) {
            words.add(PartsWords.get("brings.language", Language.named(code)));
        }
        return String.join("; ", words);
    }
}
