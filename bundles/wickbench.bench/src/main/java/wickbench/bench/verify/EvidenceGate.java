package wickbench.bench.verify;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.gate.Surfaces;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Methods;
import wickbench.bench.evidence.Verification;

/** Minds a method that was shown to work for no food, surface or cleaner yet, or not on the surface that is swabbed; it stops nobody. */
@Component
public final class EvidenceGate implements Gate {
    private static final String NEIGHBOUR = "evidence";

    private final Home home;
    private final Index index;
    private final Journal journal;
    private final Methods methods;
    private final Optional<Surfaces> surfaces;

    @Activate
    public EvidenceGate(
            @Reference Home home,
            @Reference Index index,
            @Reference Journal journal,
            @Reference Methods methods,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Surfaces> surfaces) {
        this.home = home;
        this.index = index;
        this.journal = journal;
        this.methods = methods;
        this.surfaces = surfaces;
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
        List<Verification> standing =
                index
                        .read(EvidenceView.NAME, rows -> EvidenceView.standing(question.method(), question.at(), rows))
                        .stream()
                        .flatMap(ref -> journal.entry(ref).stream())
                        .map(entry -> Verification.read(entry.ref().toString(), entry.body())
                                .orRefuse())
                        .toList();
        if (standing.isEmpty()) {
            return issued(question.method())
                    ? refused(
                            Map.of(), "method.not-verified", question.method().toString(), "a food, surface or cleaner")
                    : new Answer.Cleared(NEIGHBOUR, Map.of());
        }
        return compared(question, standing);
    }

    /** Of what a method was verified for, a run states the surface of a swab alone; its food and its cleaner are for people to see. */
    private Answer compared(Question question, List<Verification> standing) {
        String verified = standing.stream().map(Verification::what).collect(Collectors.joining("; "));
        Map<String, String> facts = new HashMap<>(Map.of("verified_for", verified));
        Optional<String> surface = question.place()
                .filter(place -> question.route().swab())
                .flatMap(place -> surfaces.flatMap(known -> known.of(place, question.at())));
        surface.ifPresent(stated -> facts.put("surface", stated));
        facts.put("not_compared", surface.isPresent() ? "food, cleaner" : "food, surface, cleaner");
        return surface.filter(stated -> standing.stream().noneMatch(each -> names(each, stated)))
                .map(stated -> refused(facts, "method.not-verified-here", stated, verified))
                .orElseGet(() -> new Answer.Cleared(NEIGHBOUR, facts));
    }

    private static Answer refused(Map<String, String> facts, String code, String measured, String asked) {
        return new Answer.Refused(NEIGHBOUR, facts, List.of(new Answer.Reason(code, measured, asked)));
    }

    /** One wording within the other, as in steel and stainless steel; whoever reads a caution for nothing sees both. */
    private static boolean names(Verification verified, String surface) {
        return verified.surface()
                .map(text -> text.toLowerCase(Locale.ROOT))
                .filter(text -> text.contains(surface) || surface.contains(text))
                .isPresent();
    }

    /** A method from a file is only tried out. */
    private boolean issued(MethodRef method) {
        return methods.versions(method.id()).stream()
                .anyMatch(version -> version.method().ref().equals(method));
    }
}
