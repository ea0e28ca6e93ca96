package wickbench.api.clash;

/**
 * What an entry decides, when it decides something that another station may decide otherwise.
 *
 * @param subject what is decided upon, the same text on every station, for example {@code method:nut-swab}
 * @param claim what is decided; two decisions with equal claims do not clash
 */
public record Decision(String subject, String claim) {}
