package org.moultwright.store.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PhotoException;
import org.moultwright.workflow.PhotoException.Reason;

/** A picture as it came in a file. However many dots it has, only as many are held as are asked for, and some to spare. */
final class PictureBytes {
    private static final Map<String, String> ENDING_OF_FORM =
            Map.of("jpeg", "jpg", "png", "png", "gif", "gif", "bmp", "bmp", "tif", "tif", "tiff", "tif");

    static final Collection<String> ENDINGS =
            ENDING_OF_FORM.values().stream().distinct().toList();

    /** A telephone makes 108 at most now; more than this is no photo. Our own figure. */
    private static final long MOST_MEGAPIXELS = 120;

    private static final long MEGAPIXEL = 1_000_000;

    private static final Set<String> TELEPHONE_BRANDS =
            Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1", "avif", "avis");

    /** Where in a file its first box has its name, and the brand that follows. */
    private static final int BOX_NAME = 4;

    private static final int BRAND = 8;
    private static final int BRAND_END = 12;

    /** Dots read to each dot shown, along a side: enough to smooth them. */
    private static final int SPARE = 2;

    private final byte[] bytes;
    private final String name;
    private final String ending;

    private PictureBytes(byte[] bytes, String name, String ending) {
        this.bytes = bytes;
        this.name = name;
        this.ending = ending;
    }

    /** @throws PhotoException if it is no picture, or has too many dots */
    static PictureBytes of(byte[] bytes, String name) {
        if (isOfTelephones(bytes)) {
            throw new PhotoException(
                    Reason.UNREADABLE,
                    Texts.say(
                            "'{0}' is a HEIC or AVIF picture, as telephones make them; those cannot be read here.",
                            name));
        }
        return new Reading(bytes, name).with(reader -> {
            String ending = Optional.ofNullable(
                            ENDING_OF_FORM.get(reader.getFormatName().toLowerCase(Locale.ROOT)))
                    .orElseThrow(() -> new IOException("no form of photos"));
            long dots = (long) reader.getWidth(0) * reader.getHeight(0);
            if (dots > MOST_MEGAPIXELS * MEGAPIXEL) {
                throw new PhotoException(
                        Reason.TOO_LARGE,
                        Texts.say(
                                "'{0}' has {1} million dots; {2} million are the most.",
                                name, dots / MEGAPIXEL, MOST_MEGAPIXELS));
            }
            return new PictureBytes(bytes, name, ending);
        });
    }

    /**
     * Whether it is of the forms telephones pack pictures in: its first box names the form (ISO/IEC 14496-12), and which
     * pictures do is told by their makers' brands (ISO/IEC 23008-12; AVIF of the Alliance for Open Media).
     */
    private static boolean isOfTelephones(byte[] bytes) {
        if (bytes.length < BRAND_END || !"ftyp".equals(ascii(bytes, BOX_NAME))) {
            return false;
        }
        return TELEPHONE_BRANDS.contains(ascii(bytes, BRAND));
    }

    private static String ascii(byte[] bytes, int from) {
        return new String(bytes, from, 4, StandardCharsets.US_ASCII);
    }

    /** A picture's dots as a file. */
    static byte[] png(PagePicture picture) {
        BufferedImage image =
                new BufferedImage(picture.widthPixels(), picture.heightPixels(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, picture.widthPixels(), picture.heightPixels(), picture.argb(), 0, picture.widthPixels());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return out.toByteArray();
    }

    /** How files of its form end. */
    String ending() {
        return ending;
    }

    /**
     * The picture upright, its longer side at most so long.
     *
     * @throws PhotoException if it cannot be read to its end
     */
    PagePicture scaled(int longestPixels) {
        BufferedImage read = new Reading(bytes, name).with(reader -> {
            int step = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / (SPARE * longestPixels));
            ImageReadParam sparsely = reader.getDefaultReadParam();
            sparsely.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, sparsely);
        });
        double scale = Math.min(1, (double) longestPixels / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        BufferedImage shown = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D paint = shown.createGraphics();
        paint.setColor(Color.WHITE);
        paint.fillRect(0, 0, width, height);
        paint.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        paint.drawImage(read, 0, 0, width, height, null);
        paint.dispose();
        return Uprightness.of(bytes)
                .upright(new PagePicture(width, height, shown.getRGB(0, 0, width, height, null, 0, width)));
    }

    /** One reading of the bytes, whose every fault means that they are no picture. */
    private record Reading(Bytes bytes, String name) {
        Reading(byte[] bytes, String name) {
            this(() -> new ByteArrayInputStream(bytes), name);
        }

        <T> T with(Work<T> work) {
            try (ImageInputStream stream = new MemoryCacheImageInputStream(bytes.open())) {
                Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
                if (!readers.hasNext()) {
                    throw unreadable(null);
                }
                ImageReader reader = readers.next();
                CutOff cutOff = new CutOff();
                try {
                    reader.addIIOReadWarningListener(cutOff);
                    reader.setInput(stream, true, true);
                    T done = work.of(reader);
                    if (cutOff.isSaid()) {
                        throw new PhotoException(
                                Reason.UNREADABLE, Texts.say("'{0}' is cut off before its end.", name));
                    }
                    return done;
                } finally {
                    reader.dispose();
                }
            } catch (PhotoException told) {
                throw told;
            } catch (IOException | RuntimeException broken) {
                // Readers of pictures throw whatever a broken file leads them into.
                throw unreadable(broken);
            }
        }

        private PhotoException unreadable(@Nullable Throwable cause) {
            return new PhotoException(
                    Reason.UNREADABLE, Texts.say("'{0}' is no picture that can be read here.", name), cause);
        }
    }

    private interface Bytes {
        ByteArrayInputStream open();
    }

    private interface Work<T> {
        T of(ImageReader reader) throws IOException;
    }
}
