package org.moultwright.compute.forecast;

import java.util.Locale;

/**
 * Prints a larger back-test than the build can afford: arguments are keepers, broods each, how many times the
 * usual variation they show, a seed, and {@code first} or {@code second} simulator.
 */
public final class BackTestStudy {
    private BackTestStudy() {}

    public static void main(String[] arguments) {
        int keepers = Integer.parseInt(arguments[0]);
        int broodsEach = Integer.parseInt(arguments[1]);
        long start = System.nanoTime();
        BackTest test = BackTest.run(
                TriedKeeper.Simulator.valueOf(arguments[4].toUpperCase(Locale.ROOT)),
                keepers,
                broodsEach,
                Double.parseDouble(arguments[2]),
                Long.parseLong(arguments[3]));
        System.out.print(test.table());
        System.out.printf(
                "%d forecasts, %.0f ms each on all cores, simulation included%n",
                keepers * broodsEach * BackTest.SHARES.size(),
                (System.nanoTime() - start) / 1e6 / (keepers * broodsEach * BackTest.SHARES.size()));
    }
}
