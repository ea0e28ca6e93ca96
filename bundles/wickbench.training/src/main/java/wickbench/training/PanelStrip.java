package wickbench.training;

import java.util.Optional;
import wickbench.api.journal.Hash;

/**
 * A strip of which somebody said beforehand what it shows; kept photographs make a panel that several rounds share.
 *
 * @param item its name in the panel, by which two rounds are compared
 * @param line of a near-limit strip: whether experts, blind and inside the window, saw the test line
 * @param photograph the kept picture of it, where one is read instead of the strip
 */
public record PanelStrip(String item, StripClass kind, Optional<Boolean> line, Optional<Hash> photograph) {}
