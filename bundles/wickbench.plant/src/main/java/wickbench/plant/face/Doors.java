package wickbench.plant.face;

import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantKeeping;

/** What the commands call, and where they print. */
record Doors(PlantBook book, PlantKeeping keeping, Hands hands, Terminal terminal) {}
