package wickbench.parts.health;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.ViewState;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.part.Health;
import wickbench.api.part.Health.Of;
import wickbench.api.part.Health.State;
import wickbench.api.words.Decimals;
import wickbench.parts.words.PartsWords;

/** Whether what is recorded can be read, signed and listed; one that refuses tells why in its own words. */
final class RecordHealth {
    private static final int SHORT = 16;

    private final Home home;
    private final Journal journal;
    private final Index index;

    RecordHealth(Home home, Journal journal, Index index) {
        this.home = home;
        this.journal = journal;
        this.index = index;
    }

    /** A look at a home without records leaves nothing in it. */
    private Health begun(Of of, java.util.function.Supplier<Health> look) {
        if (!home.isBegun()) {
            return new Health(of, State.WELL, PartsWords.get("health.nothing"));
        }
        try {
            return look.get();
        } catch (Refusal refused) {
            return new Health(of, State.UNWELL, refused.getMessage());
        }
    }

    Health key() {
        return begun(
                Of.KEY,
                () -> journal.status()
                        .keyFingerprint()
                        .map(key -> new Health(
                                Of.KEY,
                                State.WELL,
                                PartsWords.get("health.key", key.hex().substring(0, SHORT))))
                        .orElseGet(() -> new Health(Of.KEY, State.UNWELL, PartsWords.get("health.key.none"))));
    }

    Health journal() {
        return begun(Of.JOURNAL, () -> {
            JournalStatus status = journal.status();
            if (status.readOnly().isPresent()) {
                return new Health(Of.JOURNAL, State.UNWELL, status.readOnly().get());
            }
            if (!status.notices().isEmpty()) {
                return new Health(Of.JOURNAL, State.MINDED, String.join(" ", status.notices()));
            }
            return new Health(
                    Of.JOURNAL,
                    State.WELL,
                    status.checkpoint()
                            .map(made -> PartsWords.get(
                                    "health.journal", Decimals.grouped(status.size()), Decimals.grouped(made.size())))
                            .orElseGet(
                                    () -> PartsWords.get("health.journal.unsealed", Decimals.grouped(status.size()))));
        });
    }

    Health index() {
        return begun(Of.INDEX, () -> {
            List<String> told = new ArrayList<>();
            State state = State.WELL;
            long behind = 0;
            List<ViewState> views = index.views();
            for (ViewState view : views) {
                if (view.failure().isPresent()) {
                    state = State.UNWELL;
                    told.add(PartsWords.get(
                            "health.index.failed", view.name(), view.failure().get()));
                }
                behind = Math.max(behind, view.of() - view.taken());
            }
            if (state == State.WELL && behind > 0) {
                state = State.MINDED;
                told.add(PartsWords.get("health.index.behind", behind));
            }
            if (!index.notices().isEmpty()) {
                state = state == State.WELL ? State.MINDED : state;
                told.addAll(index.notices());
            }
            return new Health(
                    Of.INDEX,
                    state,
                    told.isEmpty() ? PartsWords.get("health.index", views.size()) : String.join(" ", told));
        });
    }
}
