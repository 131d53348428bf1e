package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
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

/** What the keeper of the second simulator writes down: all trays on the same evenings, a few animals miscounted. */
final class RearingBook {
    static final List<Stage> STAGES = List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2);

    /** Share of the animals of a tray miscounted at a look: half overlooked or counted twice, half misread. */
    private static final double MISCOUNTED = 0.006;

    /** Share of the looks at a tray that are a mere glance, and how many animals a sample has at most. */
    private static final double GLANCES = 0.2;

    private static final int SAMPLE = 15;

    private static final double STATED_SD = 0.05;
    private static final double LAST_DAY = 110;

    private final Chance chance;
    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();
    private long written;

    RearingBook(Chance chance) {
        this.chance = chance;
    }

    BroodRecord of(String code, List<List<RearedAnimal>> trays, double laidDay, double pulledDay, RearingRoom room) {
        List<Stay> stays = new ArrayList<>();
        for (int tray = 0; tray < trays.size(); tray++) {
            String name = name(tray);
            stays.add(new Stay(
                    name,
                    ContainerKind.TRAY,
                    Optional.of(RearingRoom.INCUBATOR),
                    new Span(TriedBrood.at(pulledDay), Optional.empty())));
            int[] living = byStage(trays.get(tray), pulledDay);
            for (int stage = 0; stage < living.length; stage++) {
                enter(pulledDay, Account.SAC, Account.tray(name), stage, living[stage], Cause.OPENED);
            }
        }
        double before = pulledDay;
        for (double day = pulledDay + 2; day < LAST_DAY; day += 1 + chance.below(3)) {
            for (int tray = 0; tray < trays.size(); tray++) {
                takeOutDead(name(tray), trays.get(tray), before, day);
                boolean isGlance = chance.uniform() < GLANCES;
                Map<Stage, Look> looks = isGlance ? glance(trays.get(tray), day) : count(trays.get(tray), day);
                checks.add(new Check(nextId(), name(tray), TriedBrood.at(day), looks));
            }
            before = day;
        }
        return new BroodRecord(
                brood(code, laidDay, pulledDay),
                Ledger.of(entries),
                checks.stream().sorted(Comparator.comparing(Check::at)).toList(),
                stays,
                List.of(room.probeStay()),
                room.setPoints(),
                Map.of(RearingRoom.PROBE, room.readings()),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Brood brood(String code, double laidDay, double pulledDay) {
        Map<Stage, Double> medians = new EnumMap<>(Stage.class);
        double[] believed = RearingHouse.believed();
        for (int boundary = 0; boundary < believed.length; boundary++) {
            medians.put(STAGES.get(boundary + 1), believed[boundary]);
        }
        Instant laid = TriedBrood.at(laidDay);
        return new Brood(
                code,
                "Imagined species",
                ZoneOffset.UTC,
                Optional.of(new InstantRange(laid.minus(Duration.ofHours(12)), laid.plus(Duration.ofHours(12)))),
                Optional.of(TriedBrood.at(pulledDay)),
                STAGES,
                RearedBrood.REFERENCE_CELSIUS,
                Optional.of(new Timing(medians, STATED_SD, RearedBrood.STATED_RATE)));
    }

    /** That none is further than the furthest, and of these that there are some, or how many in a sample. */
    private Map<Stage, Look> glance(List<RearedAnimal> animals, double day) {
        List<Integer> stages = new ArrayList<>(animals.stream()
                .filter(animal -> animal.isAliveOn(day))
                .map(animal -> animal.stageOn(day))
                .toList());
        int furthest = stages.stream().mapToInt(stage -> stage).max().orElse(0);
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        if (furthest + 1 < STAGES.size()) {
            looks.put(STAGES.get(furthest + 1), new Look.None());
        }
        if (furthest > 0 && chance.uniform() < 0.5) {
            looks.put(STAGES.get(furthest), new Look.Seen());
        } else if (furthest > 0) {
            int of = Math.min(SAMPLE, stages.size());
            int found = 0;
            for (int i = 0; i < of; i++) {
                found += stages.remove(chance.below(stages.size())) == furthest ? 1 : 0;
            }
            looks.put(STAGES.get(furthest), new Look.Sample(found, of));
        }
        return looks;
    }

    private Map<Stage, Look> count(List<RearedAnimal> animals, double day) {
        int[] counted = new int[STAGES.size()];
        for (RearedAnimal animal : animals) {
            if (animal.isAliveOn(day)) {
                int stage = animal.stageOn(day);
                double luck = chance.uniform() / MISCOUNTED;
                if (luck < 0.25) {
                    continue;
                }
                int neighbour = stage + (chance.uniform() < 0.5 ? 1 : -1);
                boolean isMisread = luck >= 0.5 && luck < 1 && neighbour >= 0 && neighbour < counted.length;
                counted[isMisread ? neighbour : stage] += luck < 0.5 ? 2 : 1;
            }
        }
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        for (int stage = 0; stage < counted.length; stage++) {
            looks.put(STAGES.get(stage), new Look.Full(counted[stage]));
        }
        return looks;
    }

    private void takeOutDead(String tray, List<RearedAnimal> animals, double from, double to) {
        int[] dead = new int[STAGES.size()];
        animals.stream()
                .filter(animal -> animal.isAliveOn(from) && !animal.isAliveOn(to))
                .forEach(animal -> dead[animal.stageOn(to)]++);
        for (int stage = 0; stage < dead.length; stage++) {
            enter(to, Account.tray(tray), Account.DEAD, stage, dead[stage], Cause.UNKNOWN);
        }
    }

    private static int[] byStage(List<RearedAnimal> animals, double day) {
        int[] living = new int[STAGES.size()];
        animals.stream().filter(animal -> animal.isAliveOn(day)).forEach(animal -> living[animal.stageOn(day)]++);
        return living;
    }

    private void enter(double day, Account from, Account to, int stage, int count, Cause cause) {
        if (count > 0) {
            entries.add(LedgerEntry.of(nextId(), TriedBrood.at(day), from, to, STAGES.get(stage), count, cause));
        }
    }

    private UUID nextId() {
        written++;
        return new UUID(2, written);
    }

    private static String name(int tray) {
        return "R" + (tray + 1);
    }
}
