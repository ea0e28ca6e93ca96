/**
 * An install set as a file: a zip of plain files, a list of their SHA-256, and a maker's signature over that list.
 *
 * <p>Everything here happens in memory; a file that is refused has written nothing.
 */
package wickbench.parts.archive;
