package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Shelf;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.WrittenRoom;

/** A room comes out of its file as it went in, or not at all. */
class LeftRoomFileTest {
    private static final String FITS = "one state of a store";
    private static final Instant NOW = Instant.parse("2026-03-01T20:00:00.000001Z");

    private static final PhotoNote PHOTO =
            new PhotoNote(UUID.nameUUIDFromBytes(new byte[] {3}), NOW, "A1", "0".repeat(64) + ".jpg", "tray.jpg");

    @TempDir
    private Path folder;

    @Test
    void everyRecordComesBackAsItWas() throws IOException {
        WrittenRoom room = room(LongStream.range(0, 40));
        file().keep(FITS, room);
        assertThat(file().read(FITS)).contains(room);
    }

    @Test
    void anEmptyRoomDoesToo() throws IOException {
        WrittenRoom empty = new WrittenRoom(List.of(), Map.of(), List.of(), new Shelf(List.of()));
        file().keep(FITS, empty);
        assertThat(file().read(FITS)).contains(empty);
    }

    @Test
    void whatIsKeptLaterTakesThePlaceOfWhatWasKept() throws IOException {
        file().keep(FITS, room(LongStream.of(1)));
        file().keep("another state", room(LongStream.of(2)));
        assertThat(file().read(FITS)).isEmpty();
        assertThat(file().read("another state")).contains(room(LongStream.of(2)));
    }

    @Test
    void withoutAFileThereIsNone() {
        assertThat(file().read(FITS)).isEmpty();
    }

    @Test
    void oneWithABitTurnedIsAsNone() throws IOException {
        file().keep(FITS, room(LongStream.of(3)));
        byte[] whole = Files.readAllBytes(path());
        for (int at = 0; at < whole.length; at += 7) {
            byte[] damaged = whole.clone();
            damaged[at] ^= (byte) (1 << at % Byte.SIZE);
            Files.write(path(), damaged);
            assertThat(file().read(FITS)).as("byte %d", at).isEmpty();
        }
    }

    @Test
    void oneThatWasCutIsAsNone() throws IOException {
        file().keep(FITS, room(LongStream.of(3)));
        byte[] whole = Files.readAllBytes(path());
        for (int length : IntStream.of(0, 1, 7, 8, 9, 40, whole.length / 2, whole.length - 1)
                .toArray()) {
            Files.write(path(), Arrays.copyOf(whole, length));
            assertThat(file().read(FITS)).as("%d bytes", length).isEmpty();
        }
    }

    @Test
    void aRoomWithAPartThatHasNoKindIsNotKept() throws IOException {
        BroodRecord measured = RandomRecords.record(1)
                .withReadings(Map.of(
                        "P-1",
                        new ReadingSeries.Builder()
                                .add(new Reading(NOW, 26, 70, Quality.GOOD))
                                .build()));
        WrittenRoom room = new WrittenRoom(List.of(measured), Map.of(), List.of(), new Shelf(List.of()));
        assertThatThrownBy(() -> file().keep(FITS, room)).isInstanceOf(IllegalArgumentException.class);
        assertThat(path()).doesNotExist();
    }

    /** So that a part added to a record some day does not cost a keeper the quick start unseen. */
    @Test
    void aRecordThatIsNoPartOfARoomIsNotMade() throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        new RecordWriter(new DataOutputStream(written)).write(new Stranger("anything"));
        RecordReader reader = new RecordReader(new DataInputStream(new ByteArrayInputStream(written.toByteArray())));
        assertThatThrownBy(reader::read).hasMessageContaining("is no part of a room");
    }

    /** Of another package than those a room is made of. */
    record Stranger(String name) {}

    @Test
    void thereIsAKindForEveryPartARoomCanHave() {
        Set<Type> leaves = new LinkedHashSet<>();
        walk(WrittenRoom.class, new LinkedHashSet<>(), leaves);
        // A room is written without measured histories.
        leaves.remove(ReadingSeries.class);
        assertThat(leaves)
                .isSubsetOf(
                        int.class,
                        double.class,
                        Double.class,
                        String.class,
                        Instant.class,
                        UUID.class,
                        ZoneId.class,
                        Ledger.class,
                        Optional.class,
                        List.class,
                        Map.class);
    }

    private static void walk(Type type, Set<Type> seen, Set<Type> leaves) {
        if (!seen.add(type)) {
            return;
        }
        if (type instanceof ParameterizedType parameterized) {
            leaves.add(parameterized.getRawType());
            for (Type argument : parameterized.getActualTypeArguments()) {
                walk(argument, seen, leaves);
            }
        } else if (type instanceof Class<?> record && record.isRecord()) {
            for (RecordComponent part : record.getRecordComponents()) {
                walk(part.getGenericType(), seen, leaves);
            }
        } else if (type instanceof Class<?> sealed && sealed.isSealed()) {
            for (Class<?> permitted : sealed.getPermittedSubclasses()) {
                walk(permitted, seen, leaves);
            }
        } else if (!(type instanceof Class<?> choice && choice.isEnum())) {
            leaves.add(type);
        }
    }

    private static WrittenRoom room(LongStream seeds) {
        List<BroodRecord> broods = seeds.mapToObj(RandomRecords::record)
                .map(record -> record.withReadings(Map.of()).withPhotos(List.of(PHOTO)))
                .toList();
        return new WrittenRoom(
                broods,
                Map.of("P-1", new Reading(NOW, 26.5, Double.NaN, Quality.GOOD)),
                List.of(
                        new Deed.Summary(UUID.nameUUIDFromBytes(new byte[] {2}), Optional.empty(), NOW, "shelf moved"),
                        new Deed.Summary(UUID.nameUUIDFromBytes(new byte[] {1}), "XX-26-1", NOW, "A1 counted")),
                new Shelf(broods.get(0).stays()));
    }

    private LeftRoomFile file() {
        return new LeftRoomFile(path());
    }

    private Path path() {
        return folder.resolve("room.store.left");
    }
}
