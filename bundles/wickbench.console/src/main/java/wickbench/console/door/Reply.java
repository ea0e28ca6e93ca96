package wickbench.console.door;

/** What came of knocking. */
public sealed interface Reply {

    /** Nobody answered, and nothing was done. */
    record Nobody() implements Reply {}

    /** The command ran to its end, and its output was printed. */
    record Ended(int code) implements Reply {}

    /** The other program ended in the middle; whether the command was done is not known. */
    record Lost() implements Reply {}
}
