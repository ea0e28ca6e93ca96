package wickbench.shell;

import java.util.Optional;
import java.util.function.Consumer;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;
import wickbench.widgets.Desk;

/** What the window gives to one open page. Methods are called on the UI thread but for {@link #update}. */
@ProviderType
public interface PageContext extends Desk {

    /** Says that the page shows what was asked for; a picture of it waits for this. */
    void ready();

    /** Puts an error state, in plain words, in place of the page; its button opens the page anew. */
    void failed(String text);

    /** Returns who acts at this desk; empty when nobody has signed in. */
    Optional<PersonId> actor();

    /** Tells the listener who acts whenever that changes, until the page is closed. */
    void onActor(Consumer<Optional<PersonId>> listener);

    /** Says something in the status line, until the next thing is said. */
    void say(String text);

    /** Goes to another page; nothing happens but a word in the status line when it is not installed. */
    void show(String page);

    /** Goes to another page and there to one thing. */
    void show(String page, String argument);

    /** Tells whether a page is installed, so that a button to it may be disabled with a reason. */
    boolean has(String page);

    /** Runs something on the UI thread soon, if the page still lives then; may be called from any thread. */
    void update(Runnable change);
}
