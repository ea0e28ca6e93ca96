package wickbench.api.reading;

/**
 * One rule that had something to say.
 *
 * @param rule the rule's id, for example {@code time.read-late}
 * @param measured what was found, with its unit
 * @param asked what the rule asks for, with its unit
 */
public record Finding(String rule, Severity severity, String measured, String asked) {}
