/** The order of a day's products on a line with the least time for changes. Pure: no files, no clock, no chance. */
package wickbench.plant.order;
