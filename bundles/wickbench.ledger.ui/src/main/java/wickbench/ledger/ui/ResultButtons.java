package wickbench.ledger.ui;

import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission.Denied;
import wickbench.ledger.ResultRow;
import wickbench.shell.PageContext;

/**
 * Signs for chosen results, or leads to what is decided because of one.
 *
 * @param chosen what is selected in the table
 * @param people asked once results are there
 * @param done after a signature
 */
record ResultButtons(
        PageContext context,
        ActDoors doors,
        ActSheets sheets,
        Supplier<List<ResultRow>> chosen,
        Supplier<WhoIsWho> people,
        Runnable done) {
    void into(Composite actions) {
        context.theme().controls().button(actions, LedgerUiWords.get("review.open"), this::review);
        context.theme().controls().button(actions, LedgerUiWords.get("decide.open"), this::decide);
    }

    /** Signs for the chosen results that nobody has reviewed as they stand. */
    private void review() {
        List<UUID> waiting = chosen.get().stream()
                .filter(row -> row.reviewed().isEmpty())
                .map(ResultRow::id)
                .toList();
        if (waiting.isEmpty()) {
            context.say(LedgerUiWords.get("review.choose"));
            return;
        }
        var actor = context.actor();
        context.jobs().run(LedgerUiWords.get("result.reading"), progress -> doors.rights(actor), rights -> {
            if (rights.to(Act.REVIEW_READING) instanceof Denied denied) {
                context.say(denied.text());
            } else {
                sheets.review(waiting, rights, people.get(), done);
            }
        });
    }

    private void decide() {
        chosen.get().stream()
                .findFirst()
                .ifPresentOrElse(
                        row -> context.show("release", row.id().toString()),
                        () -> context.say(LedgerUiWords.get("result.choose")));
    }
}
