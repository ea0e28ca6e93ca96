package wickbench.training.book;

import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.home.Home;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;

/** Writes the entries of this bundle, each through the authority. */
public interface Pen {

    Entry write(Act act, String kind, Json.Obj body, Actor by);

    /** Ends the act unless the person has the role and has shown who they are; nothing is written or drawn. */
    void asked(Act act, String kind, Actor by);

    Home home();

    /** Returns the entry at a place that the index knows of. */
    Entry entry(EntryRef ref);
}
