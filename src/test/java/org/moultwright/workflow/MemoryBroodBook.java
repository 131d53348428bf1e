package org.moultwright.workflow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.moultwright.domain.BeliefNote;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.PullNote;
import org.moultwright.domain.Require;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stay;

/** A book of broods in memory, for tests of what is above the store. */
public final class MemoryBroodBook implements BroodBook, ClimateBook {
    private final Map<String, BroodRecord> takenIn = new LinkedHashMap<>();
    private final Map<UUID, Deed> deeds = new LinkedHashMap<>();

    @Override
    public synchronized List<Brood> broods() {
        return takenIn.keySet().stream()
                .flatMap(code -> find(code).stream())
                .map(BroodRecord::brood)
                .toList();
    }

    @Override
    public synchronized Optional<BroodRecord> find(String code) {
        return Optional.ofNullable(takenIn.get(code))
                .filter(record -> stands(code))
                .map(record -> withDeeds(record, deeds.values()));
    }

    @Override
    public synchronized TakenIn takeIn(BroodRecord record, ReadingSource readings) {
        boolean isNew = takenIn.putIfAbsent(record.brood().code(), record.withReadings(Map.of())) == null;
        return new TakenIn(isNew ? 1 : 0, 0);
    }

    @Override
    public synchronized void keep(Deed deed) {
        deed.undoes()
                .ifPresent(id -> Require.that(
                        deeds.containsKey(id) && !undone().contains(id), "deed " + id + " does not stand"));
        List<Deed> all = new ArrayList<>(deeds.values());
        all.add(deed);
        deed.content().sac().begun().ifPresent(brood -> takenIn.put(brood.code(), BroodRecord.of(brood)));
        takenIn.values().forEach(record -> withDeeds(record, all));
        deeds.put(deed.summary().id(), deed);
    }

    @Override
    public synchronized List<Deed.Summary> latestDeeds(int most) {
        Set<UUID> undone = undone();
        List<Deed> standing = new ArrayList<>(deeds.values());
        standing.removeIf(deed ->
                deed.undoes().isPresent() || undone.contains(deed.summary().id()));
        Collections.reverse(standing);
        return standing.stream().limit(most).map(Deed::summary).toList();
    }

    @Override
    public synchronized Optional<Deed> deed(UUID id) {
        return Optional.ofNullable(deeds.get(id));
    }

    @Override
    public synchronized Shelf shelf() {
        List<Stay> stays = takenIn.values().stream()
                .flatMap(record -> record.stays().stream())
                .distinct()
                .toList();
        return new Shelf(stays).with(ofRoom(Deed.Content::moves));
    }

    @Override
    public synchronized Map<String, LessonNote> leftOut() {
        Map<String, LessonNote> latest = new LinkedHashMap<>();
        ofRoom(Deed.Content::lessons).forEach(note -> latest.put(note.brood(), note));
        latest.values().removeIf(note -> !note.isLeftOut());
        return latest;
    }

    @Override
    public synchronized List<Calibration> calibrations() {
        return ofRoom(Deed.Content::calibrations);
    }

    @Override
    public synchronized List<DisplayNote> displays() {
        return ofRoom(Deed.Content::displays);
    }

    @Override
    public synchronized List<Extremes> extremes() {
        return ofRoom(content -> content.climate().extremes());
    }

    @Override
    public synchronized List<ProbeStay> placings() {
        return ofRoom(content -> content.climate().placings());
    }

    /** Whether a brood came with a folder, or was begun by a deed that stands. */
    private boolean stands(String code) {
        Set<UUID> undone = undone();
        List<Deed> beginnings = deeds.values().stream()
                .filter(deed -> deed.content()
                        .sac()
                        .begun()
                        .filter(brood -> brood.code().equals(code))
                        .isPresent())
                .toList();
        return beginnings.isEmpty()
                || beginnings.stream()
                        .anyMatch(deed -> !undone.contains(deed.summary().id()));
    }

    private <T> List<T> ofRoom(Function<Deed.Content, List<T>> part) {
        Set<UUID> undone = undone();
        return joined(
                List.of(),
                deeds.values().stream()
                        .filter(deed -> !undone.contains(deed.summary().id()))
                        .toList(),
                part);
    }

    private Set<UUID> undone() {
        Set<UUID> undone = new HashSet<>();
        deeds.values().forEach(deed -> deed.undoes().ifPresent(undone::add));
        return undone;
    }

    private static BroodRecord withDeeds(BroodRecord record, Iterable<Deed> deeds) {
        Set<UUID> undone = new HashSet<>();
        deeds.forEach(deed -> deed.undoes().ifPresent(undone::add));
        List<Deed> own = new ArrayList<>();
        List<LedgerEntry> ofPots = new ArrayList<>();
        List<PotEvent> potEvents = new ArrayList<>(record.potEvents());
        List<Pot> pots = new ArrayList<>(record.pots());
        deeds.forEach(deed -> {
            if (deed.summary().brood().filter(record.brood().code()::equals).isPresent()) {
                own.add(deed);
            }
            deed.content().potChanges().stream()
                    .filter(changes -> changes.brood().equals(record.brood().code()))
                    .forEach(changes -> {
                        ofPots.addAll(changes.entries());
                        if (!undone.contains(deed.summary().id())) {
                            potEvents.addAll(changes.events());
                            pots.addAll(changes.pots());
                        }
                    });
        });
        List<Deed> standing = own.stream()
                .filter(deed -> !undone.contains(deed.summary().id()))
                .toList();
        Brood pulled = joined(
                        List.<PullNote>of(), standing, content -> content.sac().pulls())
                .stream()
                .reduce((earlier, later) -> later)
                .map(note -> record.brood().withPulled(Optional.of(note.at())))
                .orElse(record.brood());
        return new BroodRecord(
                joined(List.<BeliefNote>of(), standing, Deed.Content::beliefs).stream()
                        .reduce((earlier, later) -> later)
                        .map(note -> pulled.withTiming(note.timing()))
                        .orElse(pulled),
                record.ledger()
                        .with(own.stream()
                                .flatMap(d -> d.content().entries().stream())
                                .toList())
                        .with(ofPots),
                joined(record.checks(), standing, Deed.Content::checks),
                record.stays(),
                record.probeStays(),
                record.setPoints(),
                record.readings(),
                joined(record.mould(), standing, Deed.Content::mould),
                joined(record.care(), standing, Deed.Content::care),
                joined(pots, standing, Deed.Content::pots),
                joined(record.runUp(), standing, content -> content.sac().runUp()),
                record.extremes(),
                potEvents,
                joined(record.photos(), standing, Deed.Content::photos));
    }

    private static <T> List<T> joined(List<T> rows, List<Deed> deeds, Function<Deed.Content, List<T>> part) {
        List<T> all = new ArrayList<>(rows);
        deeds.forEach(deed -> all.addAll(part.apply(deed.content())));
        return all;
    }
}
