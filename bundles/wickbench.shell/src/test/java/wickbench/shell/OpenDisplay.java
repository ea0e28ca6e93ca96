package wickbench.shell;

import wickbench.api.check.Refusal;

/** A program that opens a display and ends with 3 when it is refused. */
final class OpenDisplay {
    private OpenDisplay() {}

    public static void main(String[] arguments) {
        try {
            Displays.open().dispose();
        } catch (Refusal refusal) {
            System.out.println(refusal.code() + ": " + refusal.getMessage());
            System.exit(3);
        }
    }
}
