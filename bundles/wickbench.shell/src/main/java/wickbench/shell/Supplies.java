package wickbench.shell;

import wickbench.widgets.FileChoice;
import wickbench.widgets.Memory;

/** What a window stands on. */
record Supplies(
        Places places, Neighbours neighbours, Workers workers, Session session, Memory memory, FileChoice files) {}
