package wickbench.stock.gs1;

/**
 * A reason why a text cannot be taken as it stands.
 *
 * @param code which: the key of its words
 * @param at where in the text, counted from 0
 * @param fact what was found there; printable characters only
 */
public record Doubt(String code, int at, String fact) {}
