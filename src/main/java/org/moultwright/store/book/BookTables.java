package org.moultwright.store.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.HandReading;
import org.moultwright.store.climate.CalibrationTable;
import org.moultwright.store.climate.DisplayTable;
import org.moultwright.workflow.ClimateWriting;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.PotChanges;

/** All tables of broods together: how a record or a deed is spread over them, and gathered again. */
final class BookTables {
    final BroodTable broods = new BroodTable();
    final DeedTable deeds = new DeedTable();
    final LedgerTable entries = new LedgerTable();
    final LessonTable lessons = new LessonTable();
    private final BeliefTable beliefs = new BeliefTable();
    private final CheckTable checks = new CheckTable();
    private final MouldTable mould = new MouldTable();
    private final CareTable care = new CareTable();
    private final PotTable pots = new PotTable();
    private final PhotoTable photos = new PhotoTable();
    private final PotEventTable potEvents = new PotEventTable();
    private final RunUpTable runUp = new RunUpTable();
    final WrittenSacs sacs = new WrittenSacs(broods, runUp);
    private final StayTable stays = new StayTable();
    private final ProbeStayTable probeStays = new ProbeStayTable();
    private final SetPointTable setPoints = new SetPointTable();
    private final CalibrationTable calibrations = new CalibrationTable();
    private final DisplayTable displays = new DisplayTable();
    private final WrittenClimate written = new WrittenClimate();
    final WrittenMoves moves = new WrittenMoves();

    BroodRecord record(Handle handle, Brood brood) {
        return written.joined(handle, moves.joined(handle, taken(handle, brood)));
    }

    /** A brood without what was written of the room's climate and places at the desk. */
    private BroodRecord taken(Handle handle, Brood brood) {
        String code = brood.code();
        return new BroodRecord(
                brood,
                entries.ledger(handle, code),
                checks.standing(handle, code).stream()
                        .sorted(CheckTable.BY_TIME)
                        .toList(),
                stays.ofBrood(handle, code),
                probeStays.ofBrood(handle, code),
                setPoints.ofBrood(handle, code),
                Map.of(),
                mould.standing(handle, code),
                care.standing(handle, code),
                pots.standing(handle, code),
                runUp.standing(handle, code),
                written.extremesOfBrood(handle, code),
                potEvents.standing(handle, code),
                photos.standing(handle, code));
    }

    /** Adds the rows of a record that are not there yet, and says how many. */
    int takeIn(Handle handle, BroodRecord record) {
        String code = record.brood().code();
        BroodRecord known = record(handle, record.brood());
        return entries.takeIn(handle, code, record.ledger().entries())
                + checks.takeIn(handle, code, record.checks())
                + stays.takeIn(handle, code, without(known.stays(), record.stays()))
                + probeStays.takeIn(
                        handle, code, without(known.probeStays(), written.withoutPlacings(handle, record.probeStays())))
                + setPoints.takeIn(handle, code, without(known.setPoints(), record.setPoints()))
                + mould.takeIn(handle, code, record.mould())
                + care.takeIn(handle, code, record.care())
                + pots.takeIn(handle, code, record.pots())
                + potEvents.takeIn(handle, code, record.potEvents())
                + photos.takeIn(handle, code, record.photos())
                + runUp.takeIn(handle, code, record.runUp())
                + written.takeIn(handle, code, record.extremes());
    }

    /** What a brood does not know yet: a folder written out after a move tells of the move, which stands already. */
    private static <T> List<T> without(List<T> known, List<T> rows) {
        return rows.stream().filter(row -> !known.contains(row)).toList();
    }

    void insert(Handle handle, Deed deed) {
        deeds.insert(handle, new DeedTable.Head(deed.summary(), deed.undoes()));
        Deed.Content content = deed.content();
        calibrations.insert(handle, deed.summary().id(), content.calibrations());
        displays.insert(handle, deed.summary().id(), content.displays());
        written.insert(handle, deed.summary().id(), content.climate());
        moves.insert(handle, deed.summary().id(), content.moves());
        deed.undoes().ifPresent(undone -> written.withdraw(handle, undone));
        deed.summary().brood().ifPresent(brood -> insert(handle, brood, deed));
        content.potChanges().forEach(changes -> {
            entries.insert(handle, changes.brood(), Optional.of(deed.summary().id()), changes.entries());
            pots.insert(handle, changes.brood(), Optional.of(deed.summary().id()), changes.pots());
            potEvents.insert(handle, changes.brood(), Optional.of(deed.summary().id()), changes.events());
        });
    }

    private void insert(Handle handle, String brood, Deed deed) {
        Optional<UUID> id = Optional.of(deed.summary().id());
        Deed.Content content = deed.content();
        entries.insert(handle, brood, id, content.entries());
        checks.insert(handle, brood, id, content.checks());
        mould.insert(handle, brood, id, content.mould());
        care.insert(handle, brood, id, content.care());
        pots.insert(handle, brood, id, content.pots());
        photos.insert(handle, brood, id, content.photos());
        beliefs.insert(handle, brood, id, content.beliefs());
        lessons.insert(handle, brood, id, content.lessons());
        sacs.insert(handle, brood, deed.summary().id(), content.sac());
    }

    /** The readings a deed brings or takes away again. */
    List<HandReading> readings(Handle handle, Deed deed) {
        return Stream.concat(
                        deed.content().climate().readings().stream(),
                        deed.undoes().stream().flatMap(undone -> written.ofDeed(handle, undone).readings().stream()))
                .toList();
    }

    Deed deed(Handle handle, DeedTable.Head head) {
        UUID id = head.summary().id();
        Deed.Content content = head.summary()
                .brood()
                .map(brood -> content(handle, brood, id))
                .orElseGet(() -> contentOfRoom(handle, id));
        return new Deed(head.summary(), head.undoes(), content.withMoves(moves.ofDeed(handle, id)));
    }

    private Deed.Content content(Handle handle, String brood, UUID deed) {
        return new Deed.Content(
                entries.ofDeed(handle, brood, deed),
                checks.ofDeed(handle, brood, deed),
                mould.ofDeed(handle, brood, deed),
                care.ofDeed(handle, brood, deed),
                pots.ofDeed(handle, brood, deed),
                beliefs.ofDeed(handle, brood, deed),
                lessons.ofDeed(handle, brood, deed),
                List.of(),
                List.of(),
                ClimateWriting.NOTHING,
                List.of(),
                List.of(),
                sacs.ofDeed(handle, brood, deed),
                photos.ofDeed(handle, brood, deed));
    }

    private Deed.Content contentOfRoom(Handle handle, UUID deed) {
        List<PotChanges> changes = Stream.of(pots, potEvents, entries)
                .flatMap(table -> table.broodsOf(handle, deed).stream())
                .distinct()
                .map(brood -> new PotChanges(
                        brood,
                        pots.ofDeed(handle, brood, deed),
                        potEvents.ofDeed(handle, brood, deed),
                        entries.ofDeed(handle, brood, deed)))
                .toList();
        return Deed.Content.ofRoom(
                        calibrations.ofDeed(handle, deed), displays.ofDeed(handle, deed), written.ofDeed(handle, deed))
                .withPotChanges(changes);
    }
}
