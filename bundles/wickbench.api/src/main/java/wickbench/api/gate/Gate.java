package wickbench.api.gate;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * A neighbour's say on whether a test may be started.
 *
 * <p>Contributed as a service. It answers as of the instant of the act, so the same question about yesterday gets yesterday's
 * answer. What has happened is recorded whatever a gate says, with its refusals as findings.
 */
@ConsumerType
public interface Gate {

    /** Returns who answers: {@code stock}, {@code training}, …. */
    String neighbour();

    Answer ask(Question question);
}
