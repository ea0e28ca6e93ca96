package wickbench.figures.sums;

import wickbench.api.check.Complaint;

/** What comes of a sum. */
public sealed interface Reckoned {

    /**
     * It has an answer.
     *
     * @param given what it was reckoned from, with what holds where nothing was given
     */
    record Done(Given given, Answer answer) implements Reckoned {}

    /**
     * There is none.
     *
     * @param input the input that is wrong; empty when all of them together have no answer
     * @param complaint why, for the command line; its line counts rows from 1
     */
    record Wrong(String input, Complaint complaint) implements Reckoned {}
}
