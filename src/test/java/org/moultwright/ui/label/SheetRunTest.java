package org.moultwright.ui.label;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.print.DocFlavor;
import javax.print.PrintService;
import javax.print.StreamPrintServiceFactory;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.label.PageSize;
import org.moultwright.workflow.PagePicture;

/** Java's own printer that writes PostScript stands for one on a desk. */
class SheetRunTest {
    /** ISO 216: A5 is 148 by 210 mm. Lying it is 595.3 by 419.5 points of 1/72 inch. */
    private static final PageSize LYING = PageSize.of(210, 148);

    private final ByteArrayOutputStream paper = new ByteArrayOutputStream();
    private final PrintService printer = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
            DocFlavor.SERVICE_FORMATTED.PRINTABLE, "application/postscript")[0]
            .getPrintService(paper);
    private final SheetRun run = run(false);

    @Test
    void aLabelWiderThanHighIsOnePrintersPaperLyingOnItsSide() {
        assertThat(new PrinterPapers(printer).of(LYING)).contains(MediaSizeName.ISO_A5);
        assertThat(run.print(LYING, 2, sheet -> black(827, 583))).isTrue();
        String printed = paper.toString(ISO_8859_1);
        assertThat(printed.split("showpage", -1)).hasSizeGreaterThan(2);
        assertThat(printed)
                .as("upright, as the printer knows it")
                .containsPattern("/PageSize \\[419\\.5\\d* 595\\.2\\d*]");
    }

    @Test
    void aPaperThePrinterDoesNotHaveIsRefusedBeforeAnythingIsDrawn() {
        assertThat(run.refusal(PageSize.of(57, 33)))
                .contains(LabelWords.noSuchPaper(printer.getName(), PageSize.of(57, 33)));
    }

    @Test
    void aPrinterSetToAnotherPaperIsRefusedWhereTheJobCannotAskForIt() {
        MediaSize set = MediaSize.getMediaSizeForName((MediaSizeName) printer.getDefaultAttributeValue(Media.class));
        assertThat(run.refusal(PageSize.of(set.getX(MediaSize.MM), set.getY(MediaSize.MM))))
                .isEmpty();
        assertThat(run.refusal(LYING)).contains(LabelWords.otherPaper(printer.getName(), LYING));
        assertThat(run(true).refusal(LYING)).isEmpty();
    }

    private SheetRun run(boolean isAskedForPaper) {
        return new SheetRun(isAskedForPaper, printer, "Pot labels", 1);
    }

    @Test
    void aFaultWhileASheetIsDrawnIsToldAsItself() {
        assertThatThrownBy(() -> run.print(LYING, 1, sheet -> {
                    throw new IllegalStateException("not drawn");
                }))
                .hasMessage("not drawn");
    }

    @Test
    void aPictureLiesOverTheWholePaperAndIsDrawnOnce() {
        List<Integer> drawn = new ArrayList<>();
        DrawnPages pages = new DrawnPages(LYING, 1, page -> {
            drawn.add(page);
            return black(827, 583);
        });
        BufferedImage canvas = new BufferedImage(600, 425, BufferedImage.TYPE_INT_RGB);
        canvas.createGraphics().fillRect(0, 0, 600, 425);
        assertThat(pages.print(canvas.createGraphics(), new PageFormat(), 0)).isEqualTo(Printable.PAGE_EXISTS);
        assertThat(pages.print(canvas.createGraphics(), new PageFormat(), 0)).isEqualTo(Printable.PAGE_EXISTS);
        assertThat(pages.print(canvas.createGraphics(), new PageFormat(), 1)).isEqualTo(Printable.NO_SUCH_PAGE);
        assertThat(drawn).containsExactly(0);
        assertThat(new int[] {canvas.getRGB(0, 0), canvas.getRGB(594, 418)}).containsOnly(0xFF000000);
        assertThat(new int[] {canvas.getRGB(597, 50), canvas.getRGB(50, 422)}).containsOnly(0xFFFFFFFF);
    }

    private static PagePicture black(int width, int height) {
        int[] argb = new int[width * height];
        Arrays.fill(argb, 0xFF000000);
        return new PagePicture(width, height, argb);
    }
}
