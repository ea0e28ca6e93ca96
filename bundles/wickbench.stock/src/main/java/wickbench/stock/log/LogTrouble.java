package wickbench.stock.log;

import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.words.Words;

/** Says why a logger's file is not taken. */
final class LogTrouble {
    private LogTrouble() {}

    static BadInput at(String file, long line, String code, Object... facts) {
        return new BadInput(Complaint.at(file, (int) Math.min(Integer.MAX_VALUE, line), "", words(code, facts)));
    }

    static BadInput of(String file, String code, Object... facts) {
        return new BadInput(Complaint.of(file, words(code, facts)));
    }

    /** Asks for something that the file does not tell; the field is what is to be said. */
    static BadInput ask(String file, String field, String code, Object... facts) {
        return new BadInput(Complaint.of(file, field, words(code, facts)));
    }

    private static String words(String code, Object... facts) {
        return Words.of(LogTrouble.class, "stock").get("log." + code, facts);
    }
}
