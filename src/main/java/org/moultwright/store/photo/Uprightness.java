package org.moultwright.store.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.moultwright.workflow.PagePicture;

/**
 * Which way is up in a JPEG, as the camera wrote it down: tag 0x0112 of Exif 2.3, values 1 to 8. A picture that says
 * nothing, or nothing that is understood, is upright.
 */
enum Uprightness {
    UPRIGHT(false),
    MIRRORED(false),
    UPSIDE_DOWN(false),
    UPSIDE_DOWN_MIRRORED(false),
    MIRRORED_ON_LEFT_SIDE(true),
    ON_LEFT_SIDE(true),
    MIRRORED_ON_RIGHT_SIDE(true),
    ON_RIGHT_SIDE(true);

    private static final int START_OF_IMAGE = 0xFFD8;
    private static final int START_OF_SCAN = 0xFFDA;
    private static final int APPLICATION_SEGMENT_1 = 0xFFE1;
    private static final String EXIF = "Exif\0\0";
    private static final int ORIENTATION = 0x0112;
    private static final int ENTRY_BYTES = 12;
    private static final int VALUE_AT = 8;

    private final boolean isTurned;

    Uprightness(boolean isTurned) {
        this.isTurned = isTurned;
    }

    static Uprightness of(byte[] picture) {
        try {
            return values()[written(ByteBuffer.wrap(picture)) - 1];
        } catch (IndexOutOfBoundsException notUnderstood) {
            return UPRIGHT;
        }
    }

    /** The picture as it is to be looked at. */
    PagePicture upright(PagePicture lying) {
        int width = lying.widthPixels();
        int height = lying.heightPixels();
        int[] from = lying.argb();
        int[] to = new int[from.length];
        int wide = isTurned ? height : width;
        for (int i = 0; i < to.length; i++) {
            to[i] = from[source(i % wide, i / wide, width, height)];
        }
        return new PagePicture(wide, isTurned ? width : height, to);
    }

    private int source(int x, int y, int width, int height) {
        return switch (this) {
            case UPRIGHT -> y * width + x;
            case MIRRORED -> y * width + width - 1 - x;
            case UPSIDE_DOWN -> (height - 1 - y) * width + width - 1 - x;
            case UPSIDE_DOWN_MIRRORED -> (height - 1 - y) * width + x;
            case MIRRORED_ON_LEFT_SIDE -> x * width + y;
            case ON_LEFT_SIDE -> (height - 1 - x) * width + y;
            case MIRRORED_ON_RIGHT_SIDE -> (height - 1 - x) * width + width - 1 - y;
            case ON_RIGHT_SIDE -> x * width + width - 1 - y;
        };
    }

    private static int written(ByteBuffer bytes) {
        if (bytes.remaining() < Short.BYTES || unsigned(bytes, 0) != START_OF_IMAGE) {
            return 1;
        }
        int at = Short.BYTES;
        while (at + 2 * Short.BYTES <= bytes.limit()) {
            int marker = unsigned(bytes, at);
            if (marker == START_OF_SCAN) {
                return 1;
            }
            int length = unsigned(bytes, at + Short.BYTES);
            if (marker == APPLICATION_SEGMENT_1 && isExif(bytes, at + 2 * Short.BYTES)) {
                return inDirectory(bytes, at + 2 * Short.BYTES + EXIF.length());
            }
            at += Short.BYTES + Math.max(length, Short.BYTES);
        }
        return 1;
    }

    private static boolean isExif(ByteBuffer bytes, int at) {
        byte[] head = new byte[EXIF.length()];
        bytes.get(at, head);
        return new String(head, StandardCharsets.US_ASCII).equals(EXIF);
    }

    /** Looks the tag up in the first directory of what Exif holds, a TIFF within the JPEG. */
    private static int inDirectory(ByteBuffer bytes, int tiff) {
        ByteBuffer ordered =
                bytes.duplicate().order(bytes.get(tiff) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff + ordered.getInt(tiff + Integer.BYTES);
        int entries = unsigned(ordered, directory);
        for (int i = 0; i < entries; i++) {
            int entry = directory + Short.BYTES + i * ENTRY_BYTES;
            if (unsigned(ordered, entry) == ORIENTATION) {
                return unsigned(ordered, entry + VALUE_AT);
            }
        }
        return 1;
    }

    private static int unsigned(ByteBuffer bytes, int at) {
        return Short.toUnsignedInt(bytes.getShort(at));
    }
}
