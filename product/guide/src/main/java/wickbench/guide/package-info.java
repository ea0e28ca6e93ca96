/** Makes the guide: pages for a browser of the Markdown in {@code docs}. */
package wickbench.guide;
