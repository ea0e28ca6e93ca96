package wickbench.report.pdf;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;

/** A canvas that refuses pictures: what is drawn on it stays lines and words. */
abstract class NoPictures extends Graphics2D {

    @Override
    public void setXORMode(Color color) {
        throw noPicture();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int right, int down) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(Image image, AffineTransform transform, ImageObserver observer) {
        throw noPicture();
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp change, int x, int y) {
        throw noPicture();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        throw noPicture();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color ground, ImageObserver observer) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, Color ground, ImageObserver observer) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(
            Image image, int x1, int y1, int x2, int y2, int l, int t, int r, int b, ImageObserver observer) {
        throw noPicture();
    }

    @Override
    public boolean drawImage(
            Image image,
            int x1,
            int y1,
            int x2,
            int y2,
            int l,
            int t,
            int r,
            int b,
            Color ground,
            ImageObserver observer) {
        throw noPicture();
    }

    private static UnsupportedOperationException noPicture() {
        return new UnsupportedOperationException("only shapes and words are drawn on paper");
    }
}
