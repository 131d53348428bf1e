package org.moultwright.benchmark;

/** What the same deed cost in a window, done several times over. */
final class FrameTimes {
    private final String what;
    private final Stopwatch first = new Stopwatch();
    private final Stopwatch toolkit = new Stopwatch();
    private final Stopwatch painter = new Stopwatch();

    FrameTimes(String what) {
        this.what = what;
    }

    void add(Presented.Shown shown) {
        first.add(shown.firstSeconds());
        toolkit.add(shown.toolkitSeconds());
        painter.add(shown.painterSeconds());
    }

    void report() {
        System.out.printf(
                "%-45s median %6.1f ms (%.1f to %.1f); worked: toolkit %.1f ms, painter %.1f ms%n",
                what,
                1000 * first.median(),
                1000 * first.shortest(),
                1000 * first.longest(),
                1000 * toolkit.median(),
                1000 * painter.median());
    }
}
