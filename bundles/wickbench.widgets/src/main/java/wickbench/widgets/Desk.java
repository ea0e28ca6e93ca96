package wickbench.widgets;

import org.osgi.annotation.versioning.ProviderType;

/** What a widget needs of the window that it stands in. */
@ProviderType
public interface Desk {

    Theme theme();

    Jobs jobs();

    Memory memory();

    /** Returns how a person is asked for a file. */
    FileChoice files();
}
