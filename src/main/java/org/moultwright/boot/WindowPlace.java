package org.moultwright.boot;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.geometry.Rectangle2D;

/**
 * Where a window stood.
 *
 * @param bounds of the window, of a maximised one those it has when it is not
 */
record WindowPlace(Rectangle2D bounds, boolean isMaximized) {
    /** What a window may stand over the edge of a screen, as one laid to it does; common practice, no source. */
    private static final double OVER_THE_EDGE = 16;

    private static final Pattern WRITTEN =
            Pattern.compile("(-?\\d{1,5}) (-?\\d{1,5}) (\\d{1,5}) (\\d{1,5})( maximized)?");

    /** A place as it was written; empty where it is none. */
    static Optional<WindowPlace> read(String line) {
        Matcher found = WRITTEN.matcher(line);
        return found.matches()
                ? Optional.of(new WindowPlace(
                        new Rectangle2D(number(found, 1), number(found, 2), number(found, 3), number(found, 4)),
                        found.group(5) != null))
                : Optional.empty();
    }

    /** "120 80 1280 800", left, top, width and height in pixels; then "maximized" if it was. */
    String written() {
        return Math.round(bounds.getMinX())
                + " "
                + Math.round(bounds.getMinY())
                + " "
                + Math.round(bounds.getWidth())
                + " "
                + Math.round(bounds.getHeight())
                + (isMaximized ? " maximized" : "");
    }

    /** Whether one of these screens shows the whole of it. */
    boolean fits(List<Rectangle2D> screens) {
        return screens.stream()
                .map(screen -> new Rectangle2D(
                        screen.getMinX() - OVER_THE_EDGE,
                        screen.getMinY() - OVER_THE_EDGE,
                        screen.getWidth() + 2 * OVER_THE_EDGE,
                        screen.getHeight() + 2 * OVER_THE_EDGE))
                .anyMatch(screen -> screen.contains(bounds));
    }

    private static double number(Matcher found, int group) {
        return Double.parseDouble(found.group(group));
    }
}
