package wickbench.bench.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.bench.run.RunPlanning;
import wickbench.bench.run.RunPlanning.Planned;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Job;

/** The plan of the run, made anew behind the screen whenever something asks for it. */
final class RunTimetable {
    private final PageContext context;
    private final RunHand hand;
    private final Runnable changed;
    private RunPlanning planning = RunPlanning.USUAL;
    private Optional<Planned> plan = Optional.empty();
    private Optional<Job> job = Optional.empty();
    private Optional<Supplier<Checked<Planned>>> next = Optional.empty();
    private String trouble = "";

    RunTimetable(PageContext context, RunHand hand, Runnable changed) {
        this.context = context;
        this.hand = hand;
        this.changed = changed;
    }

    Optional<Planned> plan() {
        return plan;
    }

    /** Returns why there is no plan; empty when there is one, or one is being made. */
    String trouble() {
        return trouble;
    }

    /** From now on plans with these times of hands and eyes. */
    void planning(RunPlanning other) {
        planning = other;
    }

    boolean underWay() {
        return job.isPresent();
    }

    void forget() {
        plan = Optional.empty();
        trouble = "";
    }

    /** Plans strips of which none has begun. */
    void plan(List<RunStrip> strips) {
        RunPlanning by = planning;
        run(() -> by.plan(strips, hand.now()));
    }

    /** Plans what is left of the run under way, with no new start within {@code rest}. */
    void replan(Duration rest) {
        RunPlanning by = planning;
        hand.state().ifPresent(left -> run(() -> by.plan(left, rest, hand.now())));
    }

    /** One plan is made at a time; of those asked for meanwhile only the last one still matters. */
    private void run(Supplier<Checked<Planned>> work) {
        if (underWay()) {
            next = Optional.of(work);
        } else {
            job = Optional.of(
                    context.jobs().run(FlowWords.get("planning"), progress -> work.get(), this::take, this::failed));
        }
    }

    private void take(Checked<Planned> planned) {
        plan = planned instanceof Checked.Good<Planned> good ? Optional.of(good.value()) : Optional.empty();
        ended(planned.complaints().stream().map(Complaint::text).collect(Collectors.joining("; ")));
    }

    private void failed(Exception failure) {
        plan = Optional.empty();
        ended(failure.getMessage());
    }

    private void ended(String why) {
        trouble = why;
        job = Optional.empty();
        Optional<Supplier<Checked<Planned>>> asked = next;
        next = Optional.empty();
        asked.ifPresent(this::run);
        changed.run();
    }
}
