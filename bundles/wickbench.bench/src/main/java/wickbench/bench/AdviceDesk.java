package wickbench.bench;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Question;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.method.Method;
import wickbench.api.profile.Profile;
import wickbench.api.profile.SiteProfile;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Clearance.State;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RunAdvice;
import wickbench.api.reading.SecondLook;
import wickbench.api.reading.Strip;
import wickbench.reading.Clearances;
import wickbench.reading.DueControls;
import wickbench.reading.SecondLooks;

/** Asks gates and profile before anything is started. */
@Component
public final class AdviceDesk implements RunAdvice {
    private final Home home;
    private final MethodShelf shelf;
    private final Neighbours neighbours;
    private final SiteProfile profile;
    private final ControlBook controls;

    @Activate
    public AdviceDesk(
            @Reference Home home,
            @Reference MethodShelf shelf,
            @Reference Neighbours neighbours,
            @Reference SiteProfile profile,
            @Reference Index index) {
        this.home = home;
        this.shelf = shelf;
        this.neighbours = neighbours;
        this.profile = profile;
        this.controls = new ControlBook(home, index);
    }

    @Override
    public List<Clearance> gates(Question question) {
        boolean observed = question.observer().isPresent();
        return Stream.concat(
                        Stream.of(method(question)),
                        neighbours.ask(question).stream().map(answer -> Clearances.of(answer, observed)))
                .toList();
    }

    private Clearance method(Question question) {
        Optional<Method> inForce = shelf.inForce(question.method().id(), question.at());
        boolean asAsked = inForce.filter(method -> method.ref().equals(question.method()))
                .filter(method -> method.route() == question.route())
                .isPresent();
        String found = inForce.map(method -> method.ref().toString()).orElse("-");
        return asAsked
                ? new Clearance("method", State.CLEARED, List.of())
                : new Clearance(
                        "method",
                        State.REFUSED,
                        List.of(new Answer.Reason(
                                Judging.NOT_IN_FORCE, found, question.method().toString())));
    }

    @Override
    public List<DueControl> controlsDue(List<Reading> run) {
        Instant now = home.clock().instant();
        return profile.inForce(now).map(site -> due(site, run, now)).orElse(List.of());
    }

    private List<DueControl> due(Profile site, List<Reading> run, Instant now) {
        LocalDate today = LocalDate.ofInstant(now, site.zone());
        Instant from = today.atStartOfDay(site.zone()).toInstant();
        Instant until = today.plusDays(1).atStartOfDay(site.zone()).toInstant();
        return DueControls.of(site.runControls(), run, due -> controls.ran(due, from, until));
    }

    @Override
    public BigDecimal secondReaderShare() {
        return profile.inForce(home.clock().instant()).map(Profile::doubleRead).orElse(BigDecimal.ZERO);
    }

    @Override
    public boolean drawn(UUID strip) {
        return SecondLooks.drawn(strip, secondReaderShare());
    }

    @Override
    public Optional<SecondLook> secondLook(Strip seen, boolean drawn) {
        return SecondLooks.of(seen, drawn);
    }
}
