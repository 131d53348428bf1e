package org.moultwright.store;

import java.nio.file.Path;

/** Makes new stores in a folder until it is killed, and says so of each once it is made and closed. */
final class StoreMaker {
    static final String BEGIN = "begin";
    static final String MADE = "made.";

    private StoreMaker() {}

    public static void main(String[] arguments) {
        System.out.println(BEGIN);
        for (int number = 0; true; number++) {
            H2Store.open(store(Path.of(arguments[0]), number)).close();
            System.out.println(MADE);
        }
    }

    static Path store(Path room, int number) {
        return room.resolve("new-" + number + ".store");
    }
}
