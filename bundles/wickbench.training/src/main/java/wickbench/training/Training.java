package wickbench.training;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

/**
 * What is done about competence; each act is one entry with who and why.
 *
 * <p>Each method throws {@link wickbench.api.check.Refusal} when a rule or a role says no, and
 * {@link wickbench.api.check.BadInput} when what is said cannot be; nothing is recorded then.
 */
@ProviderType
public interface Training {

    Terms terms(Terms terms, Actor by);

    /**
     * Authorises a person for a method in the version in force.
     *
     * @param until the last day; empty means the site's term from today
     * @throws wickbench.api.check.Refusal {@code training.own} when it is oneself, {@code training.move} when the table of moves
     *     does not allow it
     */
    Competence authorise(PersonId person, MethodId method, Optional<LocalDate> until, String reason, Actor by);

    /**
     * Suspends a person; for every method they were ever authorised for when none is named.
     *
     * @param since from when on what they read is in doubt; empty means from now
     */
    void suspend(PersonId person, Optional<MethodId> method, Optional<Instant> since, String reason, Actor by);

    /** Answers every suspension that stands against a person for a method, and authorises them anew. */
    Competence restore(PersonId person, MethodId method, Optional<LocalDate> until, String reason, Actor by);

    /** Says of oneself that the version in force is read and understood. */
    Competence acknowledge(MethodId method, Actor by);

    Sight sight(Sight sight, Actor by);

    BenchLight light(BenchLight light, Actor by);

    /** Keeps an observed test; {@link #countersign} by who was observed completes it. */
    UUID observed(Observation observation, Actor by);

    /** Takes in a set of questions, or a new edition of it. */
    Questions issue(Questions questions, Actor by);

    /** Lays questions before a person, shuffled; records nothing. */
    Paper paper(String set);

    /**
     * Keeps each answer of one person.
     *
     * @param choices the number of the choice for each question, from 1 in the order of the paper
     * @return whether enough were right
     */
    boolean answered(Paper paper, Map<String, Integer> choices, Actor by);

    /**
     * Says of oneself that one has seen an entry about oneself: an observed test or the score of a round.
     *
     * @param about the entry's id
     */
    void countersign(UUID about, Actor by);
}
