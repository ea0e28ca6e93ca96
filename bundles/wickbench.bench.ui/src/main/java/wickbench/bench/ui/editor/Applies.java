package wickbench.bench.ui.editor;

/** Which fields there are for a strip of the chosen format; of the others nothing goes into the method. */
final class Applies {
    private Applies() {}

    static boolean to(String path, MethodText text) {
        String format = text.text("format");
        return switch (path) {
            case "marks.hook" -> format.equals("sandwich-hook");
            case "hook_onset" -> !format.equals("competitive");
            case "faint_test" -> format.equals("competitive");
            default -> true;
        };
    }
}
