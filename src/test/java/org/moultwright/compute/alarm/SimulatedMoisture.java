package org.moultwright.compute.alarm;

import java.util.SplittableRandom;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.compute.psychro.VapourPressure;

/**
 * The water in the air of an invented box, and its coldest wall: a wet liner gives water to the air, vents take it to
 * the room, what the wall is too cold for settles on it, and twice a day the keeper mists. A humidity probe and a
 * probe on the wall, each off by a constant, tell of it.
 */
final class SimulatedMoisture {
    static final double HUMIDITY_SD_PERCENT = 1.5;
    static final double SD_CELSIUS = 0.1;

    static final double ROOM_PERCENT = 45;
    private static final double LINER_PER_MINUTE = 1 / 45.0;
    private static final double SOAKED = 3;
    private static final double SHUT = 0.05;
    private static final double MISTED_PERCENT = 97;
    private static final double LEAST_WET = 1e-9;

    private final SplittableRandom random;
    private final double restPercent;
    private final double wallShare;
    private final double humidityOffPercent;
    private final double wallOffCelsius;
    private double vapourHectopascal = Double.NaN;

    SimulatedMoisture(long seed) {
        random = new SplittableRandom(~seed);
        restPercent = random.nextDouble(60, 75);
        wallShare = random.nextDouble(0.2, 0.35);
        humidityOffPercent = HUMIDITY_SD_PERCENT * random.nextGaussian();
        wallOffCelsius = SD_CELSIUS * random.nextGaussian();
    }

    /**
     * Lets time go by.
     *
     * @param openness how many times as fast as with shut lid and open vents air goes to the room
     * @param isShut whether the vents are shut over a soaked liner
     */
    void pass(double minutes, double airCelsius, double roomCelsius, double openness, boolean isShut) {
        double full = VapourPressure.SONNTAG_1990.saturationHectopascal(airCelsius);
        double room = VapourPressure.SONNTAG_1990.saturationHectopascal(roomCelsius) * ROOM_PERCENT / 100;
        double wall = VapourPressure.SONNTAG_1990.saturationHectopascal(wallCelsius(airCelsius, roomCelsius));
        if (Double.isNaN(vapourHectopascal)) {
            vapourHectopascal = full * restPercent / 100;
        }
        if (random.nextDouble() < 2 * minutes / (24 * 60)) {
            vapourHectopascal = full * MISTED_PERCENT / 100;
        }
        // So much as holds the humidity at rest in a box at 27 °C in a room at 20 °C.
        double vents = LINER_PER_MINUTE * (1 - restPercent / 100) * 35.65 / (restPercent / 100 * 35.65 - 10.5);
        double liner = LINER_PER_MINUTE * (isShut ? SOAKED : 1);
        double settles = LINER_PER_MINUTE * Math.max(0, vapourHectopascal - wall);
        double leaves = vents * openness * (isShut ? SHUT : 1) * (vapourHectopascal - room);
        vapourHectopascal += minutes * (liner * (full - vapourHectopascal) - settles - leaves);
        vapourHectopascal = Math.min(Math.max(vapourHectopascal, LEAST_WET), full);
    }

    /** What a humidity probe in air of a temperature says, to the last digit of a tenth of a percent. */
    double saidPercent(double airCelsius) {
        double percent = 100 * vapourHectopascal / VapourPressure.SONNTAG_1990.saturationHectopascal(airCelsius);
        return Math.round(10 * Math.min(99.9, Math.max(1, percent + humidityOffPercent))) / 10.0;
    }

    /** What the watch makes of it. */
    CondensationRisk risk(double saidCelsius, double saidPercent, double airCelsius, double roomCelsius) {
        return new MeasuredAir(saidCelsius, SD_CELSIUS, saidPercent, HUMIDITY_SD_PERCENT)
                .risk(new MeasuredAir.Wall(wallCelsius(airCelsius, roomCelsius) + wallOffCelsius, SD_CELSIUS));
    }

    private double wallCelsius(double airCelsius, double roomCelsius) {
        return airCelsius - wallShare * (airCelsius - roomCelsius);
    }
}
