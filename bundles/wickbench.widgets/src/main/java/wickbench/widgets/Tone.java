package wickbench.widgets;

import org.eclipse.swt.graphics.RGB;

/**
 * The three colours of one meaning.
 *
 * @param mark fills shapes; as published by Okabe and Ito (2008)
 * @param ink words, and the outline of shapes: the mark's hue, dark or light enough to be read
 * @param wash the ground behind the words
 */
public record Tone(RGB mark, RGB ink, RGB wash) {}
