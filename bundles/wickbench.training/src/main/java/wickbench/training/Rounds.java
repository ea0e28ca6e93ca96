package wickbench.training;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.api.person.PersonId;

/**
 * Blind rounds: designed, sealed, called, opened, scored. Nothing here may be called on the thread that paints.
 *
 * <p>Acts throw {@link wickbench.api.check.Refusal} when a rule or a role says no, and {@link wickbench.api.check.BadInput} when
 * what is said cannot be; nothing is recorded then.
 */
@ProviderType
public interface Rounds {

    /** Computes what a design tells apart; records nothing. */
    Operating operating(Design design, Skill poor, Skill good);

    /**
     * Returns the rule that lets through as many mistakes on near-limit strips as keep a poor reader at most at 5 %, and no other
     * mistakes but one strip outside the window.
     */
    PassRule suggested(Map<StripClass, Integer> strips, Skill poor);

    /** Returns all rounds, newest first. */
    List<Round> all();

    Optional<Round> find(String id);

    /**
     * Opens a round: draws codes and order, seals the key, and commits to it in the journal.
     *
     * @return the round, with the key for who prepares the strips and labels them; nobody else may see it
     */
    Prepared open(RoundPlan plan, Actor by);

    /** An opened round with its key, shown once. */
    record Prepared(Round round, RoundKey key) {}

    /**
     * Keeps calls of one person, all or none.
     *
     * @param caller who called; a reader calls for themself, or a trainer types their sheet
     */
    Round call(String round, PersonId caller, List<Call> calls, Optional<String> sheet, Actor by);

    /**
     * Opens the key; refused before everybody called everything.
     *
     * @param without who is left out, with the reason
     */
    Round close(String round, List<PersonId> without, Optional<String> reason, Actor by);

    /** Scores a closed round, once, by the rule stated when it was opened. */
    Round score(String round, Actor by);

    /** Returns how the readers agree; empty before the key is opened. */
    Optional<Agreement> agreement(String round);

    /**
     * Returns what is right to call of each strip, by its code; empty before the key is opened.
     *
     * <p>Near-limit strips whose experts did not agree are not among them: nobody can be right or wrong about those.
     */
    Map<String, Truth> truth(String round);

    /** Compares a reader in two scored rounds on the strips that both hold. */
    Compared compare(PersonId reader, String first, String second);
}
