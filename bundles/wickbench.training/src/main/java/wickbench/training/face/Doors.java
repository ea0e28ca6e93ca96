package wickbench.training.face;

import wickbench.api.person.People;
import wickbench.training.Competences;
import wickbench.training.Rounds;
import wickbench.training.Training;

/** The services that the commands call. */
record Doors(Competences book, Training training, Rounds rounds, People people) {}
