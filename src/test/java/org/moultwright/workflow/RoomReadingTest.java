package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RoomReadingTest {
    private final AtomicInteger timesRead = new AtomicInteger();

    @Test
    void isWorkedOutOnceForEachRoom() {
        RoomView room = room();

        assertThat(new Counted("of broods").of(room)).isEqualTo("of broods, 1");
        assertThat(new Counted("of broods").of(room)).isEqualTo("of broods, 1");
        assertThat(new Counted("of trays").of(room)).isEqualTo("of trays, 2");
        assertThat(new Counted("of broods").of(room())).isEqualTo("of broods, 3");
    }

    @Test
    void tellsNoRoomFromAnother() {
        RoomView room = room();
        new Counted("of broods").of(room);

        assertThat(room).isEqualTo(room()).hasSameHashCodeAs(room());
    }

    private static RoomView room() {
        return new RoomView(Instant.EPOCH, List.of(), Map.of(), Optional.empty());
    }

    /** Says which time it was read. */
    private final class Counted implements RoomReading<String> {
        private final String what;

        Counted(String what) {
            this.what = what;
        }

        @Override
        public String read(RoomView room) {
            return what + ", " + timesRead.incrementAndGet();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Counted counted && counted.what.equals(what);
        }

        @Override
        public int hashCode() {
            return what.hashCode();
        }
    }
}
