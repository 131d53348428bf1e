package org.moultwright.exchange;

import java.io.DataInputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;

/** Reads what a {@link RecordWriter} wrote. Each record is made as any other is, and refuses what it never holds. */
final class RecordReader {
    private static final RecordKind[] KINDS = RecordKind.values();

    /** Where the types stand that a room is made of. */
    private static final List<String> OURS = List.of("org.moultwright.domain.", "org.moultwright.workflow.");

    private final DataInputStream in;
    private final List<Object> known = new ArrayList<>();
    private final Map<String, Constructor<?>> constructors = new HashMap<>();

    RecordReader(DataInputStream in) {
        this.in = in;
    }

    Object read() throws IOException, ReflectiveOperationException {
        return switch (KINDS[in.readByte()]) {
            case AGAIN -> known.get(in.readInt());
            case TEXT -> know(in.readUTF());
            case INTEGER -> in.readInt();
            case REAL -> in.readDouble();
            case INSTANT -> Instant.ofEpochSecond(in.readLong(), in.readInt());
            case ID -> new UUID(in.readLong(), in.readLong());
            case ZONE -> know(ZoneId.of(in.readUTF()));
            case NOTHING -> Optional.empty();
            case SOMETHING -> Optional.of(read());
            case LIST -> list();
            case MAP -> map();
            case CHOICE -> know(choice());
            case LEDGER -> ledger();
            case RECORD -> record();
        };
    }

    private Object know(Object value) {
        known.add(value);
        return value;
    }

    private List<Object> list() throws IOException, ReflectiveOperationException {
        int size = in.readInt();
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            list.add(read());
        }
        return list;
    }

    private Map<Object, Object> map() throws IOException, ReflectiveOperationException {
        int size = in.readInt();
        Map<Object, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < size; i++) {
            map.put(read(), read());
        }
        return map;
    }

    private Object choice() throws IOException, ReflectiveOperationException {
        return ours((String) read()).getEnumConstants()[in.readInt()];
    }

    private Ledger ledger() throws IOException, ReflectiveOperationException {
        return Ledger.of(
                ((List<?>) read()).stream().map(LedgerEntry.class::cast).toList());
    }

    private Object record() throws IOException, ReflectiveOperationException {
        Constructor<?> constructor = constructor((String) read());
        Object[] parts = new Object[constructor.getParameterCount()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = read();
        }
        Object made = constructor.newInstance(parts);
        return made instanceof Account ? know(made) : made;
    }

    private Constructor<?> constructor(String type) throws ReflectiveOperationException {
        Constructor<?> whole = constructors.get(type);
        if (whole == null) {
            Class<?> record = ours(type);
            whole = record.getDeclaredConstructor(Arrays.stream(record.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
            constructors.put(type, whole);
        }
        return whole;
    }

    /** A file may come from a stranger, whose names are not to have anything else of the program loaded. */
    private static Class<?> ours(String type) throws ClassNotFoundException {
        if (OURS.stream().noneMatch(type::startsWith)) {
            throw new IllegalArgumentException(type + " is no part of a room");
        }
        return Class.forName(type);
    }
}
