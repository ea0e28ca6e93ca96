package wickbench.bench.ui;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.lot.LotFacts;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Profile;
import wickbench.shell.PageContext;

/** What the neighbours offer for the form: the lots that are fit, and which part of strips a second person reads. */
final class FormChoices {
    private static final int RESOLUTION = 1_000_000;

    private final PageContext context;
    private final BenchDoors doors;
    private final EntryForm form;
    private Optional<Method> looked = Optional.empty();
    private Optional<PersonId> asked = Optional.empty();
    private BigDecimal share = BigDecimal.ZERO;

    /** What is known at a moment. */
    private record Known(List<Pick> lots, BigDecimal share) {}

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
    void look(Optional<Method> method, Optional<PersonId> by, Choices choices) {
        boolean another = !by.equals(asked);
        asked = by;
        if (another && by.isPresent()) {
            context.jobs().run(FlowWords.get("methods.asking"), progress -> methods(choices, by.get()), form::methods);
        }
        if (method.isPresent() && (another || !method.equals(looked))) {
            looked = method;
            context.jobs().run(FlowWords.get("lots.asking"), progress -> known(method.get(), by), this::take);
        }
    }

    private Known known(Method method, Optional<PersonId> by) {
        StartAdvice advice = new StartAdvice(doors);
        return new Known(
                advice.lots(method).stream()
                        .map(lot -> pick(lot, by.flatMap(person -> advice.against(method, lot.lot(), person))))
                        .toList(),
                share());
    }

    private static Pick pick(LotFacts lot, Optional<String> against) {
        Pick pick = new Pick(lot.lot().value(), FlowWords.get("lot.until", lot.effectiveExpiry(), lot.state()));
        return against.map(pick::not).orElse(pick);
    }

    private List<Pick> methods(Choices choices, PersonId by) {
        StartAdvice advice = new StartAdvice(doors);
        return choices.methods().stream()
                .map(method -> {
                    Pick pick = Choices.pick(method);
                    return advice.against(method, by).map(pick::not).orElse(pick);
                })
                .toList();
    }

    private void take(Known known) {
        share = known.share();
        form.lots(known.lots());
    }

    /** Draws whether a strip, should it look negative, is read by a second person: before anybody has seen it. */
    boolean drawn() {
        int draw = doors.home().chance().nextInt(RESOLUTION);
        return BigDecimal.valueOf(draw, 6).compareTo(share) < 0;
    }
}
