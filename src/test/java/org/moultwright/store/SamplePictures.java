package org.moultwright.store;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import javax.imageio.ImageIO;

/** Pictures for tests. */
public final class SamplePictures {
    private SamplePictures() {}

    /** The smallest GIF there is: one dot. Its bytes follow GIF89a, W3C, and never change. */
    public static byte[] gif() {
        return HexFormat.of().parseHex("47494638396101000100800000000000ffffff2c00000000010001000002024401003b");
    }

    /** A picture of one colour, with its upper left quarter red. */
    public static byte[] of(String form, int widthPixels, int heightPixels, int rgb) {
        BufferedImage image = new BufferedImage(widthPixels, heightPixels, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < heightPixels; y++) {
            for (int x = 0; x < widthPixels; x++) {
                image.setRGB(x, y, x < widthPixels / 2 && y < heightPixels / 2 ? 0xFF0000 : rgb);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, form, out);
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return out.toByteArray();
    }
}
