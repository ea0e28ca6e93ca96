package wickbench.index;

import java.io.IOException;

/** A block of the file is not what this program wrote there. */
final class ForeignBytes extends IOException {
    private static final long serialVersionUID = 1L;

    ForeignBytes(int block) {
        super("block " + block + " is not what was written");
    }
}
