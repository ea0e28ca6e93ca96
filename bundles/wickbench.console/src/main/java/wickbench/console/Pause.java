package wickbench.console;

/** Waits a moment before something is tried again. */
final class Pause {
    private Pause() {}

    /** Returns false when there is no more time to wait, since the program ends. */
    static boolean of(long millis) {
        try {
            Thread.sleep(millis);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
