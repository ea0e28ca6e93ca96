/**
 * Files that belong to entries, kept by their SHA-256; exports nothing, met through {@code wickbench.api.attachment}.
 */
package wickbench.attachments;
