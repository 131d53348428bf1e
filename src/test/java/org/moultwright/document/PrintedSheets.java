package org.moultwright.document;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.moultwright.domain.label.Box;

/** A saved PDF seen as a scanner sees it: pages as pictures at a resolution. */
final class PrintedSheets {
    private static final Map<DecodeHintType, Object> CLEAN_QR =
            Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE), DecodeHintType.TRY_HARDER, true);

    private final List<BufferedImage> pages;
    private final String text;
    private final int dpi;

    private PrintedSheets(List<BufferedImage> pages, String text, int dpi) {
        this.pages = pages;
        this.text = text;
        this.dpi = dpi;
    }

    static PrintedSheets of(Path pdf, int dpi) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                pages.add(renderer.renderImageWithDPI(page, dpi, ImageType.RGB));
            }
            return new PrintedSheets(pages, new PDFTextStripper().getText(document), dpi);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int count() {
        return pages.size();
    }

    String text() {
        return text;
    }

    /** The code inside a box of a page, if there is one that reads. */
    Optional<String> decode(int page, Box box) {
        try {
            return Optional.of(
                    new QRCodeReader().decode(bitmap(crop(page, box)), CLEAN_QR).getText());
        } catch (ReaderException e) {
            return Optional.empty();
        }
    }

    /** The Data Matrix that fills a box of a page, if it reads. */
    Optional<String> decodeDataMatrix(int page, Box box) {
        try {
            return Optional.of(new DataMatrixReader()
                    .decode(bitmap(crop(page, box)), Map.of(DecodeHintType.PURE_BARCODE, true))
                    .getText());
        } catch (ReaderException e) {
            return Optional.empty();
        }
    }

    /** How far from a point of a page anything dark lies at most, in mm. */
    double farthestInk(int page, double xMillimetres, double yMillimetres) {
        BufferedImage image = pages.get(page);
        double farthest = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (isDark(image, x, y)) {
                    farthest = Math.max(
                            farthest, Math.hypot(millimetres(x) - xMillimetres, millimetres(y) - yMillimetres));
                }
            }
        }
        return farthest;
    }

    /** All codes found on a whole page at once. */
    List<String> decodeAll(int page) {
        try {
            return Arrays.stream(new QRCodeMultiReader().decodeMultiple(bitmap(pages.get(page)), CLEAN_QR))
                    .map(Result::getText)
                    .toList();
        } catch (NotFoundException e) {
            return List.of();
        }
    }

    /** The smallest box around everything dark on a page, or inside a box of it; nothing on blank paper. */
    Optional<Box> ink(int page, Box within) {
        BufferedImage image = crop(page, within);
        int[] columns = IntStream.range(0, image.getWidth())
                .filter(x -> IntStream.range(0, image.getHeight()).anyMatch(y -> isDark(image, x, y)))
                .toArray();
        int[] rows = IntStream.range(0, image.getHeight())
                .filter(y -> IntStream.range(0, image.getWidth()).anyMatch(x -> isDark(image, x, y)))
                .toArray();
        if (columns.length == 0) {
            return Optional.empty();
        }
        return Optional.of(new Box(
                millimetres(pixels(within.leftMillimetres()) + columns[0]),
                millimetres(pixels(within.topMillimetres()) + rows[0]),
                millimetres(columns[columns.length - 1] + 1 - columns[0]),
                millimetres(rows[rows.length - 1] + 1 - rows[0])));
    }

    private BufferedImage crop(int page, Box box) {
        BufferedImage image = pages.get(page);
        int left = Math.max(0, pixels(box.leftMillimetres()));
        int top = Math.max(0, pixels(box.topMillimetres()));
        int right = Math.min(image.getWidth(), pixels(box.rightMillimetres()));
        int bottom = Math.min(image.getHeight(), pixels(box.bottomMillimetres()));
        return image.getSubimage(left, top, right - left, bottom - top);
    }

    private static BinaryBitmap bitmap(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
        return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
    }

    private static boolean isDark(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xFF) < 128;
    }

    private int pixels(double millimetres) {
        return (int) Math.round(millimetres * dpi / 25.4);
    }

    private double millimetres(int pixels) {
        return pixels * 25.4 / dpi;
    }
}
