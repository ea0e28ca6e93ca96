/** What a home remembers of its sets, so that each start brings the same ones. */
package wickbench.parts.kept;
