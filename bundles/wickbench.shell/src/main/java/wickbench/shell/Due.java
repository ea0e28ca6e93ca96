package wickbench.shell;

import wickbench.widgets.Mark;

/**
 * Something due.
 *
 * @param mark its words, with shape and colour by its urgency
 * @param page where one deals with it
 * @param argument the thing on that page
 */
public record Due(Mark mark, String page, String argument) {}
