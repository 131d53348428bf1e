package org.moultwright.compute.forecast;

/**
 * Prints a larger back-test than the build can afford: arguments are keepers, broods each, how many times the
 * usual variation they show, and a seed.
 */
public final class BackTestStudy {
    private BackTestStudy() {}

    public static void main(String[] arguments) {
        int keepers = Integer.parseInt(arguments[0]);
        int broodsEach = Integer.parseInt(arguments[1]);
        long start = System.nanoTime();
        BackTest test =
                BackTest.run(keepers, broodsEach, Double.parseDouble(arguments[2]), Long.parseLong(arguments[3]));
        System.out.print(test.table());
        System.out.printf(
                "%d forecasts, %.0f ms each on all cores, simulation included%n",
                keepers * broodsEach * BackTest.SHARES.size(),
                (System.nanoTime() - start) / 1e6 / (keepers * broodsEach * BackTest.SHARES.size()));
    }
}
