/**
 * An invented plant and the twelve months that are recorded in its home.
 *
 * <p>What happens on the lines is drawn by chance from a seed; what is recorded goes through the same doors as a person's work.
 * Nothing here is measured at a real plant.
 */
package wickbench.demo;
