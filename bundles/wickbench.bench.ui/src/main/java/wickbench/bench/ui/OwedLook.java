package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wickbench.shell.PageContext;
import wickbench.widgets.Job;

/** Asks what is owed at this site; asked while a look is under way, once more after it. */
final class OwedLook {
    private final PageContext context;
    private final BenchDoors doors;
    private final Consumer<List<OwedDue>> seen;
    private final Consumer<String> failed;
    private List<OwedDue> open = List.of();
    private Optional<Job> looking = Optional.empty();
    private boolean again;

    /** @param failed hears in words why what is owed could not be read: that is not nothing */
    OwedLook(PageContext context, BenchDoors doors, Consumer<List<OwedDue>> seen, Consumer<String> failed) {
        this.context = context;
        this.doors = doors;
        this.seen = seen;
        this.failed = failed;
    }

    List<OwedDue> open() {
        return open;
    }

    boolean byStrip() {
        return open.stream().anyMatch(OwedDue::byStrip);
    }

    void look() {
        if (looking.filter(Job::running).isPresent()) {
            again = true;
            return;
        }
        looking = Optional.of(context.jobs()
                .run(
                        FlowWords.get("owed.asking"),
                        progress -> OwedDue.open(doors),
                        this::take,
                        failure -> broken(failure.getMessage())));
    }

    private void take(List<OwedDue> some) {
        open = some;
        seen.accept(some);
        looked();
    }

    private void broken(String why) {
        open = List.of();
        failed.accept(FlowWords.get("owed.trouble", why));
        looked();
    }

    private void looked() {
        looking = Optional.empty();
        if (again) {
            again = false;
            look();
        }
    }
}
