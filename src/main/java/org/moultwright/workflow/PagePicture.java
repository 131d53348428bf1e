package org.moultwright.workflow;

import org.moultwright.domain.Require;

/** A page as a picture of opaque pixels, 0xAARRGGBB, row by row from the upper left. */
public final class PagePicture {
    private final int widthPixels;
    private final int heightPixels;
    private final int[] argb;

    public PagePicture(int widthPixels, int heightPixels, int[] argb) {
        Require.that(
                argb.length == widthPixels * heightPixels,
                "argb holds %d pixels but must hold %d × %d".formatted(argb.length, widthPixels, heightPixels));
        this.widthPixels = widthPixels;
        this.heightPixels = heightPixels;
        this.argb = argb.clone();
    }

    public int widthPixels() {
        return widthPixels;
    }

    public int heightPixels() {
        return heightPixels;
    }

    /** The pixels, as a copy. */
    public int[] argb() {
        return argb.clone();
    }
}
