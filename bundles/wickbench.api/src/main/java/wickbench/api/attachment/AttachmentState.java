package wickbench.api.attachment;

import wickbench.api.words.Coded;

/** How the file of an attachment was found. */
public enum AttachmentState implements Coded {
    WHOLE,
    MISSING,
    /** Its bytes are not those that were added. */
    ALTERED
}
