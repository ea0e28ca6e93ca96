package wickbench.bench.ui;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.lot.LotFacts;
import wickbench.api.method.Method;
import wickbench.api.profile.Profile;
import wickbench.shell.PageContext;

/** What the neighbours offer for the form: the lots that are fit, and which part of strips a second person reads. */
final class FormChoices {
    private static final int RESOLUTION = 1_000_000;

    private final PageContext context;
    private final BenchDoors doors;
    private final EntryForm form;
    private Optional<Method> looked = Optional.empty();
    private BigDecimal share = BigDecimal.ZERO;

    /** What is known at a moment. */
    private record Known(List<LotFacts> lots, BigDecimal share) {}

    FormChoices(PageContext context, BenchDoors doors, EntryForm form) {
        this.context = context;
        this.doors = doors;
        this.form = form;
    }

    /** Asks for the share, which strips that no form was filled in for need too. */
    void begin() {
        context.jobs().run(FlowWords.get("lots.asking"), progress -> share(), this::shared);
    }

    private void shared(BigDecimal known) {
        share = known;
    }

    private BigDecimal share() {
        Instant now = doors.home().clock().instant();
        return doors.persons().profile().inForce(now).map(Profile::doubleRead).orElse(BigDecimal.ZERO);
    }

    /** Asks anew when the method is another. */
    void look(Optional<Method> method) {
        if (method.isPresent() && !method.equals(looked)) {
            looked = method;
            context.jobs().run(FlowWords.get("lots.asking"), progress -> known(method.get()), this::take);
        }
    }

    private Known known(Method method) {
        Instant now = doors.home().clock().instant();
        List<LotFacts> lots = doors.lots().stream()
                .flatMap(some -> some.fitFor(method.kit(), now).stream())
                .toList();
        return new Known(lots, share());
    }

    private void take(Known known) {
        share = known.share();
        form.lots(known.lots().stream()
                .map(lot -> new Pick(lot.lot().value(), FlowWords.get("lot.until", lot.effectiveExpiry(), lot.state())))
                .toList());
    }

    /** Draws whether a strip, should it look negative, is read by a second person: before anybody has seen it. */
    boolean drawn() {
        int draw = doors.home().chance().nextInt(RESOLUTION);
        return BigDecimal.valueOf(draw, 6).compareTo(share) < 0;
    }
}
