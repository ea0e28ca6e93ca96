/** An example of a bundle: a page, a command and a table over what stands in the journal. */
package wickbench.tally;
