package wickbench.journal;

/**
 * What became of an attempt to write.
 *
 * @param <T> what is on the disk now
 */
sealed interface Written<T> {

    /** It is on the disk. */
    record Forced<T>(T value) implements Written<T> {}

    /** The disk refused and the files are as they were; the next attempt may succeed. */
    record Undone<T>(String reason) implements Written<T> {}

    /** The disk failed and nothing more may be written. */
    record Broken<T>(String reason) implements Written<T> {}
}
