/**
 * Looks at the bytes of a file: what it is, whether it is whole, and what a picture's header says.
 *
 * <p>Reads forward with a buffer and decodes nothing, so a file made to burst a decoder bursts nothing here.
 */
package wickbench.attachments.look;
