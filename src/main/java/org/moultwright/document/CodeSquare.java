package org.moultwright.document;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.datamatrix.DataMatrixWriter;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A text as a QR code or a Data Matrix: a square of dark and light modules, without its quiet zone.
 *
 * <p>A QR code is as small as the text allows, since fewer modules can each be larger on the label; among levels of
 * error correction that need no more modules it takes the strongest. A pot code of up to ten symbols fits
 * the smallest square of 21 modules even at level H, which survives the loss of 30 % of it. As a Data Matrix the same
 * needs 14 modules and a quiet zone of one, 16 across instead of 29.
 */
final class CodeSquare {
    /** The clear modules QR codes ask for on each side (ISO/IEC 18004). */
    private static final int QR_QUIET_MODULES = 4;

    /** The clear modules a Data Matrix asks for on each side (ISO/IEC 16022). */
    private static final int DATA_MATRIX_QUIET_MODULES = 1;

    private static final List<ErrorCorrectionLevel> STRONGER =
            List.of(ErrorCorrectionLevel.M, ErrorCorrectionLevel.Q, ErrorCorrectionLevel.H);

    /** Matters only to codes with small or foreign letters; pot codes need no character set. */
    private static final Map<EncodeHintType, Object> ANY_LETTER = Map.of(EncodeHintType.CHARACTER_SET, "UTF-8");

    private static final Map<EncodeHintType, Object> SQUARE =
            Map.of(EncodeHintType.DATA_MATRIX_SHAPE, SymbolShapeHint.FORCE_SQUARE);

    private final BitMatrix modules;
    private final int quietModules;

    private CodeSquare(BitMatrix modules, int quietModules) {
        this.modules = modules;
        this.quietModules = quietModules;
    }

    /**
     * The code for a room that is so many printer dots wide and high: a QR code, which every phone reads, unless its
     * modules would be smaller than prints reliably; then a Data Matrix.
     */
    static CodeSquare within(String text, int roomDots, int leastModuleDots) {
        CodeSquare qr = qr(text);
        boolean fits = roomDots / qr.sizeWithQuietZone() >= leastModuleDots;
        boolean isPlain = StandardCharsets.US_ASCII.newEncoder().canEncode(text);
        return fits || !isPlain ? qr : dataMatrix(text);
    }

    static CodeSquare qr(String text) {
        ByteMatrix best = encode(text, ErrorCorrectionLevel.L);
        for (ErrorCorrectionLevel level : STRONGER) {
            ByteMatrix stronger = encode(text, level);
            if (stronger.getWidth() == best.getWidth()) {
                best = stronger;
            }
        }
        BitMatrix modules = new BitMatrix(best.getWidth());
        for (int row = 0; row < best.getHeight(); row++) {
            for (int column = 0; column < best.getWidth(); column++) {
                if (best.get(column, row) == 1) {
                    modules.set(column, row);
                }
            }
        }
        return new CodeSquare(modules, QR_QUIET_MODULES);
    }

    static CodeSquare dataMatrix(String text) {
        return new CodeSquare(
                new DataMatrixWriter().encode(text, BarcodeFormat.DATA_MATRIX, 0, 0, SQUARE),
                DATA_MATRIX_QUIET_MODULES);
    }

    int size() {
        return modules.getWidth();
    }

    int quietModules() {
        return quietModules;
    }

    int sizeWithQuietZone() {
        return size() + 2 * quietModules;
    }

    boolean isDark(int column, int row) {
        return modules.get(column, row);
    }

    private static ByteMatrix encode(String text, ErrorCorrectionLevel level) {
        try {
            return Encoder.encode(text, level, ANY_LETTER).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("text '" + text + "' is too long for a code square", e);
        }
    }
}
