package org.moultwright.ui.label;

import java.util.Arrays;
import java.util.Optional;
import javax.print.PrintService;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;
import org.moultwright.domain.label.PageSize;

/** The papers one printer has. Java knows each upright, also a label that is wider than high. */
record PrinterPapers(PrintService printer) {
    /** Printers round their papers' sizes. */
    private static final double ROUNDED_MILLIMETRES = 1;

    /** The printer's own paper of that size. */
    Optional<MediaSizeName> of(PageSize page) {
        Object papers = printer.getSupportedAttributeValues(Media.class, null, null);
        return papers instanceof Media[] all
                ? Arrays.stream(all)
                        .filter(MediaSizeName.class::isInstance)
                        .map(MediaSizeName.class::cast)
                        .filter(paper -> isOf(page, paper))
                        .findFirst()
                : Optional.empty();
    }

    /** Whether it puts out such paper as long as nobody asks for another. */
    boolean isSetTo(PageSize page) {
        return printer.getDefaultAttributeValue(Media.class) instanceof MediaSizeName paper && isOf(page, paper);
    }

    private static boolean isOf(PageSize page, MediaSizeName paper) {
        MediaSize size = MediaSize.getMediaSizeForName(paper);
        return size != null
                && isAbout(size.getX(MediaSize.MM), Math.min(page.widthMillimetres(), page.heightMillimetres()))
                && isAbout(size.getY(MediaSize.MM), Math.max(page.widthMillimetres(), page.heightMillimetres()));
    }

    private static boolean isAbout(double one, double other) {
        return Math.abs(one - other) <= ROUNDED_MILLIMETRES;
    }
}
