package wickbench.attachments.look;

import java.util.Optional;
import wickbench.api.attachment.MediaType;
import wickbench.api.attachment.Picture;

/** What a file turned out to be. */
public sealed interface Look {

    /** A whole file of a type that may be attached. */
    record Known(MediaType type, Optional<Picture> picture) implements Look {}

    /**
     * A file that is not taken.
     *
     * @param reason as a code
     */
    record Unreadable(String reason) implements Look {}
}
