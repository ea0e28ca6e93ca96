package wickbench.demo;

import java.util.Optional;
import wickbench.api.attachment.Attachments;
import wickbench.api.home.Home;
import wickbench.api.journal.Journal;
import wickbench.api.method.Methods;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.People;
import wickbench.api.reading.ReadingDoor;

/** The doors of the house through which everything goes in. */
record Doors(
        Home home,
        Journal journal,
        People people,
        Methods methods,
        ReadingDoor readings,
        OwedWork owed,
        Optional<Attachments> attachments) {}
