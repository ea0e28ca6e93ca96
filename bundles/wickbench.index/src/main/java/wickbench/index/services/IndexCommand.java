package wickbench.index.services;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import wickbench.api.command.Terminal;
import wickbench.api.index.Difference;
import wickbench.api.index.Index;
import wickbench.api.index.IndexVerification;
import wickbench.api.index.ViewState;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/** How far the index is, and making it again. */
@Command(name = "index", synopsisSubcommandLabel = "COMMAND")
final class IndexCommand {
    private static final int BEHIND = 1;
    private static final int DIFFERS = 1;
    private final Index index;
    private final Terminal terminal;
    private final Words words = Words.of(IndexCommand.class, "index");

    IndexCommand(Index index, Terminal terminal) {
        this.index = index;
        this.terminal = terminal;
    }

    @Command(name = "status")
    int status() {
        index.catchUp(terminal.progress(words.get("index.catching-up")));
        return show();
    }

    @Command(name = "rebuild")
    int rebuild() {
        index.rebuild(terminal.progress(words.get("index.rebuilding")));
        return show();
    }

    @Command(name = "verify")
    int verify() {
        IndexVerification verification = index.verify(terminal.progress(words.get("index.verifying")));
        if (terminal.json()) {
            terminal.json(json(verification));
        } else {
            verification.differences().stream().map(this::line).forEach(terminal::line);
            terminal.line(
                    words.get(outcome(verification), verification.differences().size()));
        }
        index.notices().forEach(terminal::note);
        return verification.holds() ? 0 : DIFFERS;
    }

    private static String outcome(IndexVerification verification) {
        if (!verification.complete()) {
            return "index.verify.stopped";
        }
        return verification.holds() ? "index.verify.holds" : "index.verify.differs";
    }

    private String line(Difference found) {
        String key = switch (found.kind()) {
            case CHANGED -> "index.row.changed";
            case ADDED -> "index.row.added";
            case MISSING -> "index.row.missing";
        };
        return words.get(key, found.view(), found.table(), found.row());
    }

    private static Json.Obj json(IndexVerification verification) {
        return Json.object()
                .with("holds", verification.holds())
                .with("complete", verification.complete())
                .with(
                        "differences",
                        Json.array(verification.differences().stream()
                                .map(found -> Json.object()
                                        .with("view", found.view())
                                        .with("table", found.table())
                                        .with("row", found.row())
                                        .with("kind", found.kind().name().toLowerCase(Locale.ROOT)))
                                .toList()));
    }

    private int show() {
        List<ViewState> views = index.views();
        if (terminal.json()) {
            terminal.json(Json.array(views.stream().map(IndexCommand::json).toList()));
        } else {
            terminal.table(
                    List.of(
                            words.get("index.view"),
                            words.get("index.taken"),
                            words.get("index.of"),
                            words.get("index.state")),
                    views.stream().map(this::row).toList());
        }
        index.notices().forEach(terminal::note);
        return views.stream().allMatch(IndexCommand::complete) ? 0 : BEHIND;
    }

    private List<String> row(ViewState view) {
        String state = view.failure()
                .map(why -> words.get("index.stopped", why))
                .orElseGet(() -> words.get(complete(view) ? "index.complete" : "index.incomplete"));
        return List.of(view.name(), String.valueOf(view.taken()), String.valueOf(view.of()), state);
    }

    private static Json.Obj json(ViewState view) {
        return Json.object()
                .with("view", view.name())
                .with("version", view.version())
                .with("taken", view.taken())
                .with("of", view.of())
                .withText("failure", view.failure());
    }

    private static boolean complete(ViewState view) {
        return view.failure().isEmpty() && view.taken() == view.of();
    }
}
