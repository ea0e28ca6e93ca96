package wickbench.bench.verify;

import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Methods;

/** Minds a method that was shown to work for no food, surface or cleaner yet; it stops nobody. */
@Component
public final class EvidenceGate implements Gate {
    private static final String NEIGHBOUR = "evidence";

    private final Home home;
    private final Index index;
    private final Methods methods;

    @Activate
    public EvidenceGate(@Reference Home home, @Reference Index index, @Reference Methods methods) {
        this.home = home;
        this.index = index;
        this.methods = methods;
    }

    @Override
    public String neighbour() {
        return NEIGHBOUR;
    }

    @Override
    public Answer ask(Question question) {
        if (!home.isBegun()) {
            return new Answer.Cleared(NEIGHBOUR, Map.of());
        }
        List<String> standing =
                index.read(EvidenceView.NAME, rows -> EvidenceView.standing(question.method(), question.at(), rows));
        return standing.isEmpty() && issued(question.method())
                ? new Answer.Refused(
                        NEIGHBOUR,
                        Map.of(),
                        List.of(new Answer.Reason(
                                "method.not-verified", question.method().toString(), "a food, surface or cleaner")))
                : new Answer.Cleared(
                        NEIGHBOUR, standing.isEmpty() ? Map.of() : Map.of("verified_for", String.join("; ", standing)));
    }

    /** A method from a file is only tried out. */
    private boolean issued(MethodRef method) {
        return methods.versions(method.id()).stream()
                .anyMatch(version -> version.method().ref().equals(method));
    }
}
