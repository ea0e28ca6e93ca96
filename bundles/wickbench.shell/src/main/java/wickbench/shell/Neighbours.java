package wickbench.shell;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import wickbench.api.authority.SignIn;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.person.People;

/** The services that the window uses where they are installed; they may come and go. */
@Component(service = Neighbours.class)
public final class Neighbours {

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<Journal> journals = List.of();

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<Index> indexes = List.of();

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<People> peoples = List.of();

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<SignIn> signIns = List.of();

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<DueSource> dueSources = List.of();

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<FirstSteps> firstSteps = List.of();

    /** Uses a sign-in given by hand, where there is no framework. */
    void signIn(SignIn signIn) {
        signIns = List.of(signIn);
    }

    /** Uses a journal given by hand. */
    void journal(Journal journal) {
        journals = List.of(journal);
    }

    /** Uses a source of what is due given by hand. */
    void dueSource(DueSource source) {
        dueSources = List.of(source);
    }

    /** Uses a source of first steps given by hand. */
    void firstSteps(FirstSteps source) {
        firstSteps = List.of(source);
    }

    Optional<Journal> journal() {
        return journals.stream().findFirst();
    }

    Optional<Index> index() {
        return indexes.stream().findFirst();
    }

    Optional<People> people() {
        return peoples.stream().findFirst();
    }

    Optional<SignIn> signIn() {
        return signIns.stream().findFirst();
    }

    List<DueSource> dueSources() {
        return dueSources;
    }

    List<FirstSteps> firstSteps() {
        return firstSteps;
    }
}
