package org.moultwright.ui.intake;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Stay;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The containers a thermometer can hang in now: of the room as it stands, the widest first. */
record Containers(List<String> codes, Optional<String> usual) {

    static Containers of(RoomView room, Instant now) {
        List<Stay> stays = room.broods().stream()
                .flatMap(brood -> brood.record().stays().stream())
                .filter(stay -> stay.span().contains(now))
                .sorted(Comparator.comparing(Stay::kind).thenComparing(Stay::container))
                .toList();
        List<String> codes = Stream.concat(
                        stays.stream().map(Stay::container),
                        room.occupiedTrays().stream().map(TrayView::tray))
                .distinct()
                .toList();
        Optional<String> box = stays.stream()
                .filter(stay -> stay.kind() == ContainerKind.BOX)
                .map(Stay::container)
                .findFirst();
        return new Containers(codes, box.or(() -> codes.stream().findFirst()));
    }
}
