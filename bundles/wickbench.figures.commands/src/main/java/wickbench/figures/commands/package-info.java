/**
 * The command face of the figures: {@code wickbench figures …}.
 *
 * <p>One class a subcommand, each a child of {@code Figures}, which answers and complains for all of them.
 */
package wickbench.figures.commands;
