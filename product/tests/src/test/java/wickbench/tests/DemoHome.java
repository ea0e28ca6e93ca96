package wickbench.tests;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The demonstration's home with two people who have passphrases: one who reviews, one who releases. */
record DemoHome(StartedProgram program, Path folder) {
    static final String REVIEWER = "qa-01";
    static final String RELEASER = "lead-01";
    static final String REVIEWERS = "quiet lamps by the river";
    static final String RELEASERS = "eleven slow barges pass";
    private static final String OFFICE = "office-01";
    private static final String OFFICES = "seven grey herons wade";
    private static final String ONCE = "come in and choose yours";

    /** Founds it. */
    static DemoHome found(StartedProgram program, Path folder) throws ReflectiveOperationException {
        DemoHome home = new DemoHome(program, folder);
        // long past, whatever day it is
        home.done("", OFFICE, "demo", "--until", "2026-03-01", "--months", "2");
        home.done(OFFICES + "\n" + OFFICES, OFFICE, "people", "passphrase");
        home.done(OFFICES, OFFICE, "people", "add", REVIEWER, "--name", "Nele Garbe", "--role", "reviewer");
        home.passphrase(REVIEWER, REVIEWERS);
        home.passphrase(RELEASER, RELEASERS);
        return home;
    }

    private void passphrase(String person, String own) throws ReflectiveOperationException {
        done(String.join("\n", OFFICES, ONCE, ONCE), OFFICE, "people", "reset", person);
        done(String.join("\n", ONCE, own, own), person, "people", "passphrase");
    }

    /** Calls a command as somebody who types on standard input, and expects that it is done. */
    String done(String typed, String who, String... command) throws ReflectiveOperationException {
        Answer answer = told(typed, who, command);
        if (answer.code() != 0) {
            throw new AssertionError(String.join(" ", command) + ": " + answer);
        }
        return answer.out();
    }

    Answer told(String typed, String who, String... command) throws ReflectiveOperationException {
        List<String> line = new ArrayList<>(List.of("--home", folder.toString(), "--as", who, "--passphrase-stdin"));
        line.addAll(List.of(command));
        return program.told(typed + "\n", line.toArray(String[]::new));
    }
}
