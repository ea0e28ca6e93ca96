/** The words of this bundle. */
package wickbench.parts.words;
