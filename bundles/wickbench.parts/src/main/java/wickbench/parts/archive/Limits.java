package wickbench.parts.archive;

/** How large an install set may be; several times what the largest of this product needs. */
final class Limits {
    private static final int MIB = 1 << 20;

    /** Bytes of the archive itself. */
    static final int ARCHIVE = 64 * MIB;

    /** Bytes of one file in it, unpacked. */
    static final int FILE = 48 * MIB;

    /** Bytes of all files together, unpacked. */
    static final int ALL = 128 * MIB;

    /** Files. */
    static final int FILES = 200;

    /** Bytes that come out of one byte; deflate reaches 1,032, and jars, already packed, hardly 2. */
    static final int RATIO = 100;

    /** Below this size a ratio says nothing: a short text may shrink to a few bytes. */
    static final int SMALL = 64 << 10;

    /** Characters of a name. */
    static final int NAME = 160;

    private Limits() {}
}
