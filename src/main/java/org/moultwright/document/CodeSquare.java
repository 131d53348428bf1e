package org.moultwright.document;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.List;
import java.util.Map;

/**
 * A text as a QR code: a square of dark and light modules, without its quiet zone.
 *
 * <p>It is as small as the text allows, since fewer modules can each be larger on the label; among levels of
 * error correction that need no more modules it takes the strongest. A pot code of up to ten symbols fits
 * the smallest square of 21 modules even at level H, which survives the loss of 30 % of it.
 */
final class CodeSquare {
    /** The clear modules QR codes ask for on each side (ISO/IEC 18004). */
    static final int QUIET_MODULES = 4;

    private static final List<ErrorCorrectionLevel> STRONGER =
            List.of(ErrorCorrectionLevel.M, ErrorCorrectionLevel.Q, ErrorCorrectionLevel.H);

    /** Matters only to codes with small or foreign letters; pot codes need no character set. */
    private static final Map<EncodeHintType, Object> ANY_LETTER = Map.of(EncodeHintType.CHARACTER_SET, "UTF-8");

    private final ByteMatrix modules;

    private CodeSquare(ByteMatrix modules) {
        this.modules = modules;
    }

    static CodeSquare of(String text) {
        ByteMatrix best = encode(text, ErrorCorrectionLevel.L);
        for (ErrorCorrectionLevel level : STRONGER) {
            ByteMatrix stronger = encode(text, level);
            if (stronger.getWidth() == best.getWidth()) {
                best = stronger;
            }
        }
        return new CodeSquare(best);
    }

    int size() {
        return modules.getWidth();
    }

    int sizeWithQuietZone() {
        return size() + 2 * QUIET_MODULES;
    }

    boolean isDark(int column, int row) {
        return modules.get(column, row) == 1;
    }

    private static ByteMatrix encode(String text, ErrorCorrectionLevel level) {
        try {
            return Encoder.encode(text, level, ANY_LETTER).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("text '" + text + "' is too long for a code square", e);
        }
    }
}
