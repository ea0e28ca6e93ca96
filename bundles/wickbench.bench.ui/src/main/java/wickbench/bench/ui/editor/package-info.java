/**
 * The editor of a method: its fields step by step, each checked as one leaves it.
 *
 * <p>It builds the same document that a method's file holds, and lets the same reader judge it; nothing is issued here.
 */
package wickbench.bench.ui.editor;
