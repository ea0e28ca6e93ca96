package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Format;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Often;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;

/** Which controls a run lacks by the site's rule; common practice, no source. */
class DueControlsTest {
    private static final ControlRule RULE =
            new ControlRule(Map.of(RunControl.BLANK, Often.RUN, RunControl.LOW_POSITIVE, Often.DAY));
    private static final Reading STRIP = new Given(Format.SANDWICH_HOOK).reading();
    private static final DueControl BLANK = due(RunControl.BLANK);
    private static final DueControl POSITIVE = due(RunControl.LOW_POSITIVE);

    @Test
    void a_run_lacks_what_the_rule_asks_for_once_for_each_kit() {
        assertThat(DueControls.of(RULE, List.of(STRIP, STRIP), any -> false)).containsExactly(BLANK, POSITIVE);
        assertThat(DueControls.of(ControlRule.NONE, List.of(STRIP), any -> false))
                .isEmpty();
    }

    @Test
    void todays_control_is_enough_where_the_rule_asks_for_one_a_day() {
        assertThat(DueControls.of(RULE, List.of(STRIP), any -> true)).containsExactly(BLANK);
    }

    @Test
    void a_control_among_the_strips_is_there_and_controls_or_lot_checks_need_none() {
        Reading blank = with(Optional.of(RunControl.BLANK), Optional.of(Reason.CONTROL));
        assertThat(DueControls.of(RULE, List.of(STRIP, blank), any -> true)).isEmpty();
        assertThat(DueControls.of(RULE, List.of(blank), any -> false)).isEmpty();
        assertThat(DueControls.of(RULE, List.of(with(Optional.empty(), Optional.of(Reason.LOT_CHECK))), any -> false))
                .isEmpty();
    }

    private static DueControl due(RunControl control) {
        return new DueControl(control, STRIP.method(), STRIP.lot());
    }

    private static Reading with(Optional<RunControl> control, Optional<Reason> reason) {
        return new Given(Format.SANDWICH_HOOK)
                .with(given -> {
                    given.control = control;
                    given.reason = reason;
                })
                .reading();
    }
}
