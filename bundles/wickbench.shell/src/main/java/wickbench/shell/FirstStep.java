package wickbench.shell;

/**
 * One thing that a new desk needs before work can begin.
 *
 * @param order small first, by tens: people before the plant, the plant before methods, methods before kits and lots, these before
 *     who may test, and that before the first strips
 * @param title what to do, as a command in few words
 * @param text what it is good for and what one must have at hand
 * @param done whether it has been done, by whomever
 * @param page where one does it
 * @param argument the thing on that page; empty for the page as it opens
 */
public record FirstStep(int order, String title, String text, boolean done, String page, String argument) {}
