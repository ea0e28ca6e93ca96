package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.bench.run.Alarm;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunState;
import wickbench.shell.PageContext;

/** Tells of windows that open or were missed in three ways: across the page, by sound, and in the status line. */
final class RunAlarm {
    private final PageContext context;
    private final AlarmBand band;
    private final Bell bell;

    RunAlarm(Composite parent, PageContext context, Bell bell) {
        this.context = context;
        this.bell = bell;
        band = new AlarmBand(parent, context.theme());
    }

    /** Tells of what has just come; of several at once the most urgent is heard. */
    void ring(List<Alarm> alarms) {
        band.ring();
        alarms.stream()
                .map(Alarm::kind)
                .sorted()
                .findFirst()
                .ifPresent(kind -> bell.ring(Bell.Sound.valueOf(kind.name())));
        Alarm first = alarms.get(0);
        context.say(FlowWords.get("say." + first.kind().code(), first.strip()));
    }

    /** Shows how things stand by now. */
    void show(Optional<RunState> run, Moment now) {
        run.ifPresentOrElse(state -> band.show(state, now), band::hide);
    }

    /** Somebody has heard. */
    void heard() {
        band.answered();
    }

    AlarmBand band() {
        return band;
    }
}
