package wickbench.training.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteProfile;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;

/**
 * The training book's say on whether a strip may be started.
 *
 * <p>Who reads the strip must be authorised: the operator, or the observer who reads in their stead. What speaks against an observed
 * operator is still told; the reading core lets a named observer make it good, so this gate looks whether the observer may.
 */
@Component
public final class TrainingGate implements Gate {
    static final String NEIGHBOUR = "training";

    private final Book book;
    private final SiteProfile profile;

    @Activate
    public TrainingGate(@Reference Book book, @Reference SiteProfile profile) {
        this.book = book;
        this.profile = profile;
    }

    @Override
    public String neighbour() {
        return NEIGHBOUR;
    }

    @Override
    public Answer ask(Question question) {
        if (!book.begun(question.at())) {
            return new Answer.NotChecked(NEIGHBOUR, required(question));
        }
        Competence operator = of(question.operator(), question);
        Optional<Competence> observer = question.observer().map(person -> of(person, question));
        Map<String, String> facts = facts("operator", operator);
        observer.ifPresent(each -> facts.putAll(facts("observer", each)));
        List<Reason> reasons = new ArrayList<>();
        against(operator).ifPresent(reasons::add);
        observer.flatMap(each -> barred(each, question)).ifPresent(reasons::add);
        return reasons.isEmpty() ? new Answer.Cleared(NEIGHBOUR, facts) : new Answer.Refused(NEIGHBOUR, facts, reasons);
    }

    private Competence of(PersonId person, Question question) {
        MethodId method = question.method().id();
        return book.competence(person, method, question.at());
    }

    private boolean required(Question question) {
        return profile.inForce(question.at())
                .filter(held -> held.requiredChecks().contains(NEIGHBOUR))
                .isPresent();
    }

    private static Optional<Reason> against(Competence operator) {
        return switch (operator.state()) {
            case AUTHORISED -> Optional.empty();
            case NEVER -> Optional.of(new Reason("operator.not-authorised", "never authorised", "authorised"));
            case SUSPENDED -> Optional.of(new Reason("operator.not-authorised", "suspended", "restored"));
            case UNREAD ->
                Optional.of(new Reason(
                        "operator.lapsed",
                        "version " + operator.read() + " read",
                        "version " + operator.version().orElseThrow() + " acknowledged"));
            case LAPSED ->
                Optional.of(new Reason(
                        "operator.lapsed",
                        operator.lapse().orElseThrow().day() + ", "
                                + operator.lapse().orElseThrow().cause().code(),
                        "authorised anew"));
        };
    }

    /** Nobody observes themself, and who may not test may not observe. */
    private static Optional<Reason> barred(Competence observer, Question question) {
        boolean own = observer.person().equals(question.operator());
        return observer.state().mayTest() && !own
                ? Optional.empty()
                : Optional.of(new Reason(
                        "observer.not-authorised",
                        own ? "the operator" : observer.state().code(),
                        "authorised"));
    }

    private static Map<String, String> facts(String who, Competence competence) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(who, competence.state().code());
        if (competence.state() != CompetenceState.NEVER) {
            facts.put(who + "_version_read", String.valueOf(competence.read()));
        }
        competence.until().ifPresent(day -> facts.put(who + "_until", day.toString()));
        competence.tested().ifPresent(day -> facts.put(who + "_tested", day.toString()));
        competence.decided().ifPresent(entry -> facts.put(who + "_decision", entry.toString()));
        return facts;
    }
}
