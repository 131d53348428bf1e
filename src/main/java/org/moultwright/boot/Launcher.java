package org.moultwright.boot;

/**
 * The first class to run. It does not extend the toolkit's application class, so that the program
 * starts from a plain class path.
 */
public final class Launcher {
    private Launcher() {}

    public static void main(String[] arguments) {}
}
