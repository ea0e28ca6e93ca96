package wickbench.training.ui;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.attachment.Attachments;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.training.RoundSheets;
import wickbench.training.Rounds;

/**
 * The ports through which blind rounds are held.
 *
 * @param methods which say format and times, where the bench is installed
 * @param attachments where photographs are kept
 * @param starts strips that were started here and not called yet
 */
record BlindDoors(
        Rounds rounds, RoundSheets sheets, Optional<Methods> methods, Attachments attachments, StripStarts starts) {

    Optional<Method> method(MethodId id, Instant now) {
        return methods.flatMap(each -> each.inForce(id, now));
    }
}
