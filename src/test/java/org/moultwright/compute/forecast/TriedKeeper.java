package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.Chance;

/** An invented keeper, whose broods follow one another. */
@FunctionalInterface
interface TriedKeeper {
    TriedBrood next(String code);

    /** Where invented keepers come from. Neither is the estimator's model, and they share no code. */
    enum Simulator {
        /** {@link SimulatedBrood}: sacs pulled about hatching; times are shares of the days from there on. */
        FIRST {
            @Override
            TriedKeeper keeper(double variation, Chance chance) {
                SimulatedHusbandry husbandry = SimulatedHusbandry.of(chance);
                return code -> SimulatedBrood.of(code, husbandry, variation, chance);
            }
        },
        /** {@link RearedBrood}: eggs pulled early; times are shares of the days from laying on. */
        SECOND {
            @Override
            TriedKeeper keeper(double variation, Chance chance) {
                RearingHouse house = RearingHouse.of(chance);
                return code -> RearedBrood.of(code, house, variation, chance);
            }
        };

        /**
         * One keeper.
         *
         * @param variation how many times the usual variation the broods show
         */
        abstract TriedKeeper keeper(double variation, Chance chance);
    }
}
