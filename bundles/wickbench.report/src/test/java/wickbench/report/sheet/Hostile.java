package wickbench.report.sheet;

import java.util.List;

/** Texts that have broken exports elsewhere. */
public final class Hostile {
    private Hostile() {}

    /** Texts that a spreadsheet might compute, or lose something of. */
    public static final List<String> CELLS = List.of(
            "=1+1",
            "+1",
            "-1+1",
            "@SUM(1)",
            "\t=1+1",
            "\n=1+1",
            "=cmd|' /C calc'!A0",
            "=HYPERLINK(\"http://example.org\",\"look\")",
            "'quoted",
            "''=1",
            " =1+1",
            "  two blanks before",
            "two blanks behind  ",
            "comma, \"quote\" and ; semicolon",
            "two\nlines",
            "_x0041_ is not A",
            "<b>&amp;</b>",
            "שלום עולם",
            "\uD83E\uDDC0 cheese",
            "µg/100 cm² × ≥ —",
            "\u202Eolleh",
            "007",
            "1E5",
            "2026-03-31",
            "1/2",
            "TRUE",
            "#REF!",
            "");
}
