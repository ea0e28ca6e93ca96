/**
 * The command line: the one front door of the program.
 *
 * <p>It reads the options that hold for every command, opens the home by registering it as a service, and calls the command
 * that an installed bundle contributes, or the desktop when none is named. Nothing is exported.
 */
package wickbench.console;
