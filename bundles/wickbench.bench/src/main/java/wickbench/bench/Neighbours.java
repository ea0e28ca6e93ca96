package wickbench.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.profile.Profile;
import wickbench.api.profile.SiteProfile;

/** Asks the gates that are there, and says of the absent ones that nobody was asked. */
@Component(service = Neighbours.class)
public final class Neighbours {
    /** Who is expected to have a say in every reading. */
    private static final List<String> EXPECTED = List.of("stock", "training");

    private final List<Gate> gates;
    private final SiteProfile profile;

    @Activate
    public Neighbours(
            @Reference(
                            cardinality = ReferenceCardinality.MULTIPLE,
                            policy = ReferencePolicy.STATIC,
                            policyOption = ReferencePolicyOption.GREEDY)
                    List<Gate> gates,
            @Reference SiteProfile profile) {
        this.profile = profile;
        this.gates =
                gates.stream().sorted(Comparator.comparing(Gate::neighbour)).toList();
    }

    List<Answer> ask(Question question) {
        List<Answer> answers = new ArrayList<>();
        gates.forEach(gate -> answers.add(gate.ask(question)));
        Set<String> required =
                profile.inForce(question.at()).map(Profile::requiredChecks).orElse(Set.of());
        Stream.concat(EXPECTED.stream(), required.stream().sorted())
                .distinct()
                .filter(name ->
                        gates.stream().noneMatch(gate -> gate.neighbour().equals(name)))
                .forEach(name -> answers.add(new Answer.NotChecked(name, required.contains(name))));
        return answers;
    }
}
