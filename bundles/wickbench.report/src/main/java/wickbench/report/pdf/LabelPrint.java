package wickbench.report.pdf;

import java.io.IOException;
import java.util.List;
import wickbench.api.report.Section.Label;
import wickbench.api.report.Section.Labels;

/** Prints labels side by side, edge to edge, so that one cut parts two of them. */
record LabelPrint(Pages pages) {
    private static final double POINTS_A_MILLIMETRE = 72 / 25.4;
    private static final double MARGIN = 4;
    private static final double HAIR = 0.3;
    private static final double CODE = 1 / 3.0;

    void print(Labels labels) throws IOException {
        double width = Math.min(Pages.WIDTH, labels.width() * POINTS_A_MILLIMETRE);
        double height = Math.min(pages.whole(), labels.height() * POINTS_A_MILLIMETRE);
        int abreast = (int) (Pages.WIDTH / width);
        List<Label> all = labels.labels();
        for (int from = 0; from < all.size(); from += abreast) {
            pages.need(height);
            List<Label> row = all.subList(from, Math.min(from + abreast, all.size()));
            for (int i = 0; i < row.size(); i++) {
                print(row.get(i), Pages.LEFT + i * width, width, height);
            }
            pages.down(height);
        }
    }

    private void print(Label label, double left, double width, double height) throws IOException {
        Pen pen = pages.pen();
        double top = pages.top();
        edge(pen, left, top, width, height);
        double side = Math.min(height, width * CODE) - 2 * MARGIN;
        CodeMatrix code = switch (label.symbol()) {
            case GS1_DATA_MATRIX -> CodeMatrix.gs1(label.content());
            case QR -> CodeMatrix.qr(label.content());
        };
        code.draw(pen, left + MARGIN, top + MARGIN, side);
        words(
                pen,
                label,
                new Box(left + side + 2 * MARGIN, top + MARGIN, width - side - 3 * MARGIN, height - 2 * MARGIN));
    }

    private static void edge(Pen pen, double left, double top, double width, double height) throws IOException {
        pen.line(left, top, left + width, HAIR, Style.EDGE);
        pen.line(left, top + height, left + width, HAIR, Style.EDGE);
        pen.fill(left, top, HAIR, height, Style.EDGE);
        pen.fill(left + width - HAIR, top, HAIR, height, Style.EDGE);
    }

    /** The first line stands out: what people look for. What has no room is left out from the end. */
    private static void words(Pen pen, Label label, Box box) throws IOException {
        double at = box.top();
        for (String line : label.lines()) {
            Style style = at == box.top() ? Style.STRONG : Style.SMALL.in(Style.INK);
            for (String part : pen.lines(line, box.width(), style)) {
                if (at + style.leading() <= box.top() + box.height()) {
                    pen.text(part, box.left(), at, style);
                }
                at += style.leading();
            }
        }
    }

    /** Where words may stand. */
    private record Box(double left, double top, double width, double height) {}
}
