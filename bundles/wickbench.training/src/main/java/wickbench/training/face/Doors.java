package wickbench.training.face;

import wickbench.api.person.People;
import wickbench.training.Competences;
import wickbench.training.Rounds;
import wickbench.training.Training;
import wickbench.training.TrainingPapers;

/** The services that the commands call. */
record Doors(Competences book, Training training, Rounds rounds, People people, TrainingPapers papers) {}
