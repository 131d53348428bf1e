package org.moultwright.ui.label;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.util.function.IntFunction;
import org.moultwright.domain.label.PageSize;
import org.moultwright.workflow.PagePicture;

/** Pictures of pages, each laid over the whole of its paper. The one drawn last is kept: printing asks for it twice. */
final class DrawnPages implements Printable {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private final PageSize paper;
    private final int pages;
    private final IntFunction<PagePicture> picture;

    private int drawnPage = -1;
    private BufferedImage drawn = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

    DrawnPages(PageSize paper, int pages, IntFunction<PagePicture> picture) {
        this.paper = paper;
        this.pages = pages;
        this.picture = picture;
    }

    @Override
    public int print(Graphics canvas, PageFormat format, int page) {
        if (page >= pages) {
            return NO_SUCH_PAGE;
        }
        if (page != drawnPage) {
            drawn = drawn(picture.apply(page));
            drawnPage = page;
        }
        ((Graphics2D) canvas)
                .drawImage(
                        drawn,
                        AffineTransform.getScaleInstance(
                                paper.widthMillimetres() * POINTS_PER_MILLIMETRE / drawn.getWidth(),
                                paper.heightMillimetres() * POINTS_PER_MILLIMETRE / drawn.getHeight()),
                        null);
        return PAGE_EXISTS;
    }

    private static BufferedImage drawn(PagePicture picture) {
        int width = picture.widthPixels();
        int height = picture.heightPixels();
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        drawn.setRGB(0, 0, width, height, picture.argb(), 0, width);
        return drawn;
    }
}
