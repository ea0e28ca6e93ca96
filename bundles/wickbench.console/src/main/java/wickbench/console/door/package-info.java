/**
 * The way from a second program to the one that holds the home: a local socket that only the same user can open.
 *
 * <p>The holder opens a {@link wickbench.console.door.Door}; whoever finds the home held knocks ({@link
 * wickbench.console.door.Knock}). Nothing here runs a command: the holder is told what to run, and what it prints goes back.
 */
package wickbench.console.door;
