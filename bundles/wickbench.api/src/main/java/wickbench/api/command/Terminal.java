package wickbench.api.command;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** Where a command prints and who asks. */
@ProviderType
public interface Terminal {

    /** Tells whether the caller wants machine output ({@code --json}). */
    boolean json();

    /** Returns who acts ({@code --as}). */
    Optional<PersonId> actor();

    /** Returns who acts, or ends with bad input that asks for {@code --as PERSON}. */
    PersonId actorOrRefuse();

    /** Prints a line for people. */
    void line(String text);

    /** Prints a line on standard error. */
    void note(String text);

    /** Prints a value for machines, canonical, on one line. */
    void json(Json value);

    /** Prints a table for people; columns as wide as they need to be. */
    void table(List<String> header, List<List<String>> rows);

    /**
     * Asks for a passphrase, which is not shown; with {@code --passphrase-stdin} the next line of standard input.
     *
     * @return the caller's own copy, to be wiped after use
     * @throws wickbench.api.check.BadInput when there is nobody to ask
     */
    default char[] passphrase(String prompt) {
        throw new BadInput(Complaint.of(prompt, "there is nobody to ask"));
    }

    /** Returns a watcher that shows progress on standard error. */
    Progress progress(String what);
}
