package wickbench.training.face;

import java.util.Optional;
import wickbench.api.method.Methods;
import wickbench.training.Competences;
import wickbench.training.RoundSheets;
import wickbench.training.Rounds;
import wickbench.training.TrainingPapers;

/**
 * The services that the commands of rounds call.
 *
 * @param methods which say format and times, where the bench is installed
 */
record RoundDoors(
        Rounds rounds, Competences book, RoundSheets sheets, TrainingPapers papers, Optional<Methods> methods) {}
