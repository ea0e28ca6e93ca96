package wickbench.report.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import wickbench.api.report.Section.Tone;

/**
 * Colours and shapes of a notice.
 *
 * @param mark as published by Okabe and Ito, "Color Universal Design" (2008)
 * @param ink the words in it: the same hue, dark enough to be read
 * @param wash the ground behind them
 */
record Tones(Color mark, Color ink, Color wash) {

    static Tones of(Tone tone) {
        return switch (tone) {
            case CALM -> tones(0x009E73, 0x00624A, 0xDDF2EA);
            case ALARM -> tones(0xD55E00, 0x9A3B00, 0xFCE6D8);
            case EXTREME -> tones(0xCC79A7, 0x8A2F63, 0xF8E4EF);
            case CAUTION -> tones(0xE69F00, 0x7A4F00, 0xFDF0D0);
            case NOTICE -> tones(0x56B4E9, 0x005A8E, 0xDFF0FB);
        };
    }

    /** Draws the shape of a tone into a square; the shape alone tells the tones apart. */
    void shape(Graphics2D canvas, Tone tone, double side) {
        canvas.setPaint(ink);
        canvas.setStroke(new BasicStroke((float) side / 6));
        switch (tone) {
            case CALM -> canvas.draw(new Ellipse2D.Double(side * 0.1, side * 0.1, side * 0.8, side * 0.8));
            case ALARM -> canvas.fill(triangle(0, side, side));
            case EXTREME -> {
                canvas.fill(triangle(0, side / 2, side));
                canvas.fill(triangle(side / 2, side, side));
            }
            case CAUTION -> {
                canvas.draw(line(side * 0.1, side * 0.1, side * 0.9, side * 0.9));
                canvas.draw(line(side * 0.9, side * 0.1, side * 0.1, side * 0.9));
            }
            case NOTICE -> canvas.fill(new Rectangle2D.Double(side * 0.1, side * 0.1, side * 0.8, side * 0.8));
        }
    }

    private static Path2D triangle(double top, double bottom, double side) {
        Path2D path = new Path2D.Double();
        path.moveTo(side / 2, top);
        path.lineTo(side, bottom);
        path.lineTo(0, bottom);
        path.closePath();
        return path;
    }

    private static Path2D line(double x1, double y1, double x2, double y2) {
        Path2D path = new Path2D.Double();
        path.moveTo(x1, y1);
        path.lineTo(x2, y2);
        return path;
    }

    private static Tones tones(int mark, int ink, int wash) {
        return new Tones(new Color(mark), new Color(ink), new Color(wash));
    }
}
