package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.domain.Timing;

/**
 * Writes down an invented brood: a look every one to three days, most of them whole counts with a few misreads, some
 * only of the stage that comes next, and the dead found then.
 */
final class SimulatedKeeper {
    static final List<Stage> STAGES = List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2);
    private static final double MISREAD_SHARE = 0.006;
    private static final int LOOKING_DAYS = 70;
    private static final double PARTIAL_SHARE = 0.2;

    private final SimulatedRoom room;
    private final Chance chance;
    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();

    SimulatedKeeper(SimulatedRoom room, Chance chance) {
        this.room = room;
        this.chance = chance;
    }

    BroodRecord writtenDown(
            String code, List<List<SimulatedAnimal>> trays, double laidDay, double pulledDay, double[] believed) {
        Instant laid = TriedBrood.at(laidDay);
        Map<Stage, Double> medians = new EnumMap<>(Stage.class);
        for (int k = 0; k < believed.length; k++) {
            medians.put(STAGES.get(k + 1), believed[k]);
        }
        Brood brood = new Brood(
                code,
                "Invented species",
                ZoneOffset.UTC,
                Optional.of(new InstantRange(laid.minus(Duration.ofHours(6)), laid.plus(Duration.ofHours(6)))),
                Optional.of(TriedBrood.at(pulledDay)),
                STAGES,
                SimulatedBrood.REFERENCE_CELSIUS,
                Optional.of(new Timing(medians, 0.08, SimulatedBrood.STATED_RATE)));
        for (int tray = 0; tray < trays.size(); tray++) {
            follow("T" + (tray + 1), trays.get(tray), pulledDay);
        }
        return new BroodRecord(
                brood,
                Ledger.of(entries),
                checks.stream().sorted(Comparator.comparing(Check::at)).toList(),
                stays,
                List.of(room.probeStay()),
                room.setPoints(),
                Map.of("probe", room.readings()),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private void follow(String tray, List<SimulatedAnimal> animals, double pulledDay) {
        stays.add(new Stay(
                tray,
                ContainerKind.TRAY,
                Optional.of("incubator"),
                new Span(TriedBrood.at(pulledDay), Optional.empty())));
        int[] opened = counts(animals, pulledDay);
        for (int stage = 0; stage < opened.length; stage++) {
            enter(pulledDay, Account.SAC, Account.tray(tray), stage, opened[stage], Cause.OPENED);
        }
        double previous = pulledDay;
        double day = pulledDay + 1 + chance.below(3);
        while (day < pulledDay + LOOKING_DAYS) {
            removeDead(tray, animals, previous, day);
            List<SimulatedAnimal> living = alive(animals, day);
            Map<Stage, Look> looks =
                    chance.uniform() < PARTIAL_SHARE ? ofTheNextStage(living, day) : ofAllStages(living, day);
            if (!looks.isEmpty()) {
                checks.add(new Check(id(), tray, TriedBrood.at(day), looks));
            }
            previous = day;
            day += 1 + chance.below(3);
        }
    }

    private static List<SimulatedAnimal> alive(List<SimulatedAnimal> animals, double day) {
        return animals.stream().filter(animal -> animal.isAlive(day)).toList();
    }

    private Map<Stage, Look> ofAllStages(List<SimulatedAnimal> living, double day) {
        int[] seen = new int[STAGES.size()];
        living.forEach(animal -> {
            int stage = animal.stage(day);
            boolean isMisread = chance.uniform() < MISREAD_SHARE;
            int shift = chance.uniform() < 0.5 ? -1 : 1;
            seen[isMisread ? Math.max(0, Math.min(seen.length - 1, stage + shift)) : stage]++;
        });
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        for (int stage = 0; stage < seen.length; stage++) {
            looks.put(STAGES.get(stage), new Look.Full(seen[stage]));
        }
        return looks;
    }

    /** Whether any are in the stage after that of the middle animal, or how many of the first third of the tray. */
    private Map<Stage, Look> ofTheNextStage(List<SimulatedAnimal> living, double day) {
        int[] sorted =
                living.stream().mapToInt(animal -> animal.stage(day)).sorted().toArray();
        int next = sorted.length == 0 ? STAGES.size() : sorted[(sorted.length - 1) / 2] + 1;
        if (next >= STAGES.size()) {
            return Map.of();
        }
        long there = Arrays.stream(sorted).filter(stage -> stage >= next).count();
        if (there == 0) {
            return Map.of(STAGES.get(next), new Look.None());
        }
        int of = living.size() / 3;
        if (of == 0 || chance.uniform() < 0.5 || sorted[sorted.length - 1] > next) {
            return Map.of(STAGES.get(next), new Look.Seen());
        }
        // No animal stands by its stage in the list of the living.
        int found = (int) living.stream()
                .limit(of)
                .filter(animal -> animal.stage(day) == next)
                .count();
        return Map.of(STAGES.get(next), new Look.Sample(found, of));
    }

    private void removeDead(String tray, List<SimulatedAnimal> animals, double from, double to) {
        int[] dead = new int[STAGES.size()];
        animals.stream()
                .filter(animal -> animal.isAlive(from) && !animal.isAlive(to))
                .forEach(animal -> dead[animal.stage(to)]++);
        for (int stage = 0; stage < dead.length; stage++) {
            enter(to, Account.tray(tray), Account.DEAD, stage, dead[stage], Cause.UNKNOWN);
        }
    }

    private void enter(double day, Account from, Account to, int stage, int count, Cause cause) {
        if (count > 0) {
            entries.add(LedgerEntry.of(id(), TriedBrood.at(day), from, to, STAGES.get(stage), count, cause));
        }
    }

    private static int[] counts(List<SimulatedAnimal> animals, double day) {
        int[] counts = new int[STAGES.size()];
        animals.stream().filter(animal -> animal.isAlive(day)).forEach(animal -> counts[animal.stage(day)]++);
        return counts;
    }

    private UUID id() {
        return new UUID(chance.below(Integer.MAX_VALUE), chance.below(Integer.MAX_VALUE));
    }
}
