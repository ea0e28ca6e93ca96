package wickbench.console;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.words.KeptLanguage;
import wickbench.api.words.Language;
import wickbench.api.words.Words;

/**
 * Decides in which language the program speaks, for as long as it is open; nothing else does.
 *
 * <p>What is asked for counts first, then what was chosen on the desk of the home, then the language of the machine; where that is
 * not installed, English. The decision stands as Java's own default, which is what words and decimals go by.
 */
final class SpokenLanguage {
    private final Locale machine = Locale.getDefault(Locale.Category.DISPLAY);

    /**
     * Decides.
     *
     * @param asked the code of a language, for this call alone
     * @throws BadInput when the language asked for is not installed
     */
    SpokenLanguage(Optional<String> asked, Path home, Words words) {
        Language language = asked.map(code -> Language.find(code).orElseThrow(() -> absent(code, words)))
                .or(() -> new KeptLanguage(home).read())
                .or(() -> Language.find(machine.getLanguage()))
                .orElse(Language.ENGLISH);
        Locale.setDefault(language.locale(machine));
    }

    private static BadInput absent(String code, Words words) {
        String installed = Language.installed().stream().map(Language::code).collect(Collectors.joining(", "));
        return new BadInput(Complaint.of("--language", words.get("language.absent", code, installed)));
    }

    /** Gives the machine its language back, which a program that calls again asks anew. */
    void close() {
        Locale.setDefault(machine);
    }
}
