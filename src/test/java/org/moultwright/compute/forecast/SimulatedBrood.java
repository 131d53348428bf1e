package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.compute.rate.RateCurves;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.RateForm;

/**
 * An invented brood and its truth, from a model that is deliberately not the estimator's.
 *
 * @param record what its keeper wrote down
 * @param trays the animals of each tray
 * @param laidDay when it was laid, in days of the room
 * @param pulledDay when it came into trays
 * @param believed medians its keeper believes in, in days at the reference temperature
 * @param room its incubator
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record SimulatedBrood(
        BroodRecord record,
        List<List<SimulatedAnimal>> trays,
        double laidDay,
        double pulledDay,
        double[] believed,
        SimulatedRoom room)
        implements TriedBrood {
    static final double REFERENCE_CELSIUS = 27;
    static final RateForm STATED_RATE = new RateForm.Briere1(11, 38);
    private static final RateCurve TRUE_RATE = RateCurves.linear(1, 12.5).relativeTo(REFERENCE_CELSIUS);
    private static final double BROOD_SD = 0.035;
    private static final double STAGE_SD = 0.035;
    private static final double TRAY_SD = 0.02;

    /**
     * One brood of a keeper.
     *
     * @param variation how many times the usual variation broods show
     */
    static SimulatedBrood of(String code, SimulatedHusbandry husbandry, double variation, Chance chance) {
        double[] believed = SimulatedHusbandry.BELIEVED_DAYS;
        double brood = Math.exp(variation * BROOD_SD * chance.normal());
        double[] lengths = Arrays.stream(husbandry.stageDays())
                .map(days -> days * brood * Math.exp(variation * STAGE_SD * chance.normal()))
                .toArray();
        SimulatedRoom room = new SimulatedRoom(husbandry, chance);
        double laidDay = 1 + chance.uniform() * 5;
        double pulledDay = laidDay + 22 + chance.below(12);
        double infertile = 0.02 + 0.06 * chance.uniform();
        double hazard = 0.003 * Math.exp(0.5 * chance.normal());
        int trays = 1 + chance.below(4);
        List<List<SimulatedAnimal>> animals = Stream.generate(
                        () -> tray(lengths, infertile, hazard, laidDay, pulledDay, room, chance))
                .limit(trays)
                .toList();
        BroodRecord record = new SimulatedKeeper(room, chance).writtenDown(code, animals, laidDay, pulledDay, believed);
        return new SimulatedBrood(record, animals, laidDay, pulledDay, believed, room);
    }

    @Override
    public double trueDay(int tray, int boundary, Milestone milestone) {
        double[] days = passDays(tray, boundary);
        return days.length == 0 ? Double.NaN : days[milestone.rank(days.length) - 1];
    }

    private double[] passDays(int tray, int boundary) {
        return trays.get(tray).stream()
                .filter(animal -> animal.isAlive(pulledDay) && animal.everPasses(boundary))
                .mapToDouble(animal -> animal.passDays()[boundary])
                .sorted()
                .toArray();
    }

    @Override
    public int trueYield() {
        int last = believed.length - 1;
        return (int) trays.stream()
                .flatMap(List::stream)
                .filter(animal -> animal.isAlive(pulledDay) && animal.everPasses(last))
                .count();
    }

    @Override
    public int animals() {
        return alive(pulledDay);
    }

    @Override
    public int alive(double day) {
        return (int) trays.stream()
                .flatMap(List::stream)
                .filter(animal -> animal.isAlive(day))
                .count();
    }

    @Override
    public int trayCount() {
        return trays.size();
    }

    @Override
    public double halfDay(int boundary) {
        double[] days = IntStream.range(0, trays.size())
                .mapToObj(tray -> passDays(tray, boundary))
                .flatMapToDouble(Arrays::stream)
                .sorted()
                .toArray();
        return days.length == 0 ? Double.NaN : days[Milestone.HALF.rank(days.length) - 1];
    }

    /** An instant so far from the pulling towards the believed end. */
    Instant asOf(double share) {
        return TriedBrood.at(asOfDay(share));
    }

    @Override
    public double asOfDay(double share) {
        double end = dayAfter(laidDay, believed[believed.length - 1]);
        return pulledDay + share * (end - pulledDay);
    }

    @Override
    public double setPointDaysBetween(double fromDay, double toDay) {
        return displayedPace().ageAtDay(fromDay, toDay);
    }

    @Override
    public double dayAfter(double fromDay, double setPointDays) {
        return displayedPace().dayAtAge(fromDay, setPointDays);
    }

    private SimulatedPace displayedPace() {
        return new SimulatedPace(RateCurve.of(STATED_RATE).relativeTo(REFERENCE_CELSIUS), room::setPointCelsius);
    }

    private static List<SimulatedAnimal> tray(
            double[] lengths,
            double infertile,
            double hazard,
            double laidDay,
            double pulledDay,
            SimulatedRoom room,
            Chance chance) {
        double warmer = 0.15 * chance.normal();
        double own = Math.exp(TRAY_SD * chance.normal());
        double[] ownLengths = Arrays.stream(lengths).map(length -> length * own).toArray();
        SimulatedPace pace = new SimulatedPace(TRUE_RATE, hour -> room.trueCelsius(hour) + warmer);
        double mouldDay = chance.uniform() < 0.1 ? pulledDay + 40 * chance.uniform() : Double.POSITIVE_INFINITY;
        double mouldShare = 0.1 + 0.2 * chance.uniform();
        int count = 20 + chance.below(60);
        return Stream.generate(() -> {
                    SimulatedAnimal animal = SimulatedAnimal.born(ownLengths, infertile, hazard, laidDay, pace, chance);
                    return chance.uniform() < mouldShare ? animal.dyingAt(mouldDay + 3 * chance.uniform()) : animal;
                })
                .limit(count)
                .toList();
    }
}
