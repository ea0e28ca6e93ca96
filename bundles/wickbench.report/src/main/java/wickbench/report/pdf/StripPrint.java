package wickbench.report.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.io.IOException;
import java.util.List;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.report.Section.StripFigure;
import wickbench.reading.ReadingWords;
import wickbench.report.ReportWords;

/**
 * Prints strips: housing, port, window and lines.
 *
 * <p>One or two that follow one another stand side by side with words beside each line. More are patterns to be compared: small,
 * in rows, with the marks alone beside their lines.
 */
record StripPrint(Pages pages) {
    /** How high strips with their titles are. */
    static final double WHOLE = 180;

    /** How many stand side by side with words. */
    private static final int ABREAST = 2;

    /** How many stand side by side with their marks alone. */
    private static final int SMALL_ABREAST = 8;

    private static final double SMALL_WHOLE = 122;
    private static final double SMALL_BODY = 30;
    private static final double SMALL_SCALE = 0.6;
    private static final double HEIGHT = 142;
    private static final double INDENT = 46;
    private static final double WIDTH = 46;
    private static final double WINDOW_TOP = 12;
    private static final double WINDOW_HEIGHT = 78;
    private static final double WINDOW_WIDTH = 22;
    private static final double LINE = 4;
    private static final Color HOUSING = new Color(0xFAFBFC);
    private static final Color RIM = new Color(0x8C98A4);
    private static final Color WELL = new Color(0xDFE5EA);
    private static final Color DYE = new Color(0x8E1F4F);
    private static final Color FAINT_DYE = new Color(0xD5B3C2);
    private static final Color GHOST = new Color(0x6B7782);

    /** @param figures all that follow one another */
    void print(List<StripFigure> figures) throws IOException {
        if (figures.size() > ABREAST) {
            for (int i = 0; i < figures.size(); i += SMALL_ABREAST) {
                small(figures.subList(i, Math.min(figures.size(), i + SMALL_ABREAST)));
            }
            return;
        }
        pages.need(WHOLE);
        double column = Pages.WIDTH / ABREAST;
        for (int i = 0; i < figures.size(); i++) {
            print(figures.get(i), Pages.LEFT + i * column, column - 12);
        }
        pages.down(WHOLE);
    }

    private void print(StripFigure figure, double left, double width) throws IOException {
        Pen pen = pages.pen();
        pen.text(pen.fitting(figure.title(), width, Style.STRONG), left, pages.top(), Style.STRONG);
        double second = pages.top() + Style.STRONG.leading();
        pen.text(pen.fitting(ReadingWords.text(figure.strip().format()), width, Style.NAME), left, second, Style.NAME);
        double top = second + Style.NAME.leading() + 4;
        PdfCanvas canvas = pen.canvas(left + INDENT, top, 1);
        body(canvas);
        List<LineRole> lines = figure.strip().format().lines();
        for (int i = 0; i < lines.size(); i++) {
            double middle = WINDOW_TOP + WINDOW_HEIGHT * (i + 0.5) / lines.size();
            line(canvas, figure.strip().lines().get(lines.get(i)), middle);
            words(figure, lines.get(i), left + INDENT, top + middle);
        }
        canvas.dispose();
    }

    private void small(List<StripFigure> figures) throws IOException {
        pages.need(SMALL_WHOLE);
        double column = Pages.WIDTH / SMALL_ABREAST;
        for (int i = 0; i < figures.size(); i++) {
            small(figures.get(i), Pages.LEFT + i * column, column - 4);
        }
        pages.down(SMALL_WHOLE);
    }

    private void small(StripFigure figure, double left, double width) throws IOException {
        Pen pen = pages.pen();
        double line = pages.top();
        for (String part : pen.lines(figure.title(), width, Style.HEAD)) {
            pen.text(part, left, line, Style.HEAD);
            line += Style.HEAD.leading();
        }
        double top = pages.top() + SMALL_BODY;
        double indent = (width - WIDTH * SMALL_SCALE) / 2;
        PdfCanvas canvas = pen.canvas(left + indent, top, SMALL_SCALE);
        body(canvas);
        List<LineRole> lines = figure.strip().format().lines();
        for (int i = 0; i < lines.size(); i++) {
            double middle = WINDOW_TOP + WINDOW_HEIGHT * (i + 0.5) / lines.size();
            line(canvas, figure.strip().lines().get(lines.get(i)), middle);
            double at = top + middle * SMALL_SCALE - Style.SMALL.leading() / 2;
            String mark = pen.fitting(mark(figure, lines.get(i)), indent - 3, Style.SMALL);
            pen.textToRight(mark, left + indent - 2, at, Style.SMALL);
        }
        canvas.dispose();
    }

    private static String mark(StripFigure figure, LineRole role) {
        return figure.marks().getOrDefault(role, ReportWords.get("pdf.strip.mark." + role.code()));
    }

    private static void body(Graphics2D canvas) {
        panel(canvas, new RoundRectangle2D.Double(0, 0, WIDTH, HEIGHT - 6, 12, 12), HOUSING);
        double left = (WIDTH - WINDOW_WIDTH) / 2;
        panel(canvas, new RoundRectangle2D.Double(left, WINDOW_TOP, WINDOW_WIDTH, WINDOW_HEIGHT, 4, 4), Color.WHITE);
        panel(canvas, new RoundRectangle2D.Double(left, HEIGHT - 40, WINDOW_WIDTH, 26, 22, 26), WELL);
    }

    private static void panel(Graphics2D canvas, RoundRectangle2D shape, Color fill) {
        canvas.setPaint(fill);
        canvas.fill(shape);
        canvas.setPaint(RIM);
        canvas.setStroke(new BasicStroke(0.8f));
        canvas.draw(shape);
    }

    private static void line(Graphics2D canvas, Seen seen, double middle) {
        double left = (WIDTH - WINDOW_WIDTH) / 2 + 1;
        double width = WINDOW_WIDTH - 2;
        switch (seen) {
            case SEEN -> band(canvas, DYE, left, middle, width, LINE);
            case FAINT -> band(canvas, FAINT_DYE, left, middle, width, LINE);
            case NOT_SEEN -> ghost(canvas, left, middle, width);
            case DAMAGED -> damaged(canvas, left, middle, width);
        }
    }

    private static void band(Graphics2D canvas, Color color, double left, double middle, double width, double height) {
        canvas.setPaint(color);
        canvas.fill(new Rectangle2D.Double(left, middle - height / 2, width, height));
    }

    /** Where a line would be: a thin dotted trace. */
    private static void ghost(Graphics2D canvas, double left, double middle, double width) {
        canvas.setPaint(GHOST);
        canvas.setStroke(
                new BasicStroke(0.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {1, 2}, 0));
        canvas.draw(new Line2D.Double(left, middle, left + width, middle));
    }

    /** Three pieces out of line, smeared. */
    private static void damaged(Graphics2D canvas, double left, double middle, double width) {
        double third = width / 3;
        band(canvas, DYE, left, middle - 3, third, LINE);
        band(canvas, FAINT_DYE, left + third, middle + 3, third * 0.7, LINE);
        band(canvas, DYE, left + 2 * third, middle - 1, third, LINE / 2);
    }

    private void words(StripFigure figure, LineRole role, double left, double y) throws IOException {
        Pen pen = pages.pen();
        pen.line(left - 8, y, left - 1, 0.5, Style.EDGE);
        pen.line(left + WIDTH + 1, y, left + WIDTH + 10, 0.5, Style.EDGE);
        String mark = mark(figure, role);
        double top = y - Style.STRONG.leading() / 2;
        pen.textToRight(pen.fitting(mark, INDENT - 12, Style.STRONG), left - 11, top, Style.STRONG);
        Seen seen = figure.strip().lines().get(role);
        String says = ReportWords.get("pdf.strip.line", ReadingWords.text(role), ReadingWords.text(seen));
        pen.text(says, left + WIDTH + 15, top, Style.BODY);
    }
}
