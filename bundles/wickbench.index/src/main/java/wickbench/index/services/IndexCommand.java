package wickbench.index.services;

import java.util.List;
import picocli.CommandLine.Command;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;
import wickbench.api.index.ViewState;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/** How far the index is, and making it again. */
@Command(name = "index", synopsisSubcommandLabel = "COMMAND")
final class IndexCommand {
    private static final int BEHIND = 1;
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
