package org.moultwright.exchange;

import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.Ledger;

/** Writes records part by part, whichever they are; what comes again and again is written once. */
final class RecordWriter {
    private final DataOutputStream out;
    private final Map<Object, Integer> known = new HashMap<>();

    RecordWriter(DataOutputStream out) {
        this.out = out;
    }

    /** @throws IllegalArgumentException if it has a part that there is no kind for */
    void write(Object value) throws IOException {
        Integer before = isRepeated(value) ? known.get(value) : null;
        if (before == null) {
            writeAnew(value);
            if (isRepeated(value)) {
                known.put(value, known.size());
            }
        } else {
            begin(RecordKind.AGAIN);
            out.writeInt(before);
        }
    }

    private static boolean isRepeated(Object value) {
        return value instanceof String
                || value instanceof Enum<?>
                || value instanceof ZoneId
                || value instanceof Account;
    }

    private void writeAnew(Object value) throws IOException {
        if (value instanceof String text) {
            begin(RecordKind.TEXT);
            out.writeUTF(text);
        } else if (value instanceof Integer integer) {
            begin(RecordKind.INTEGER);
            out.writeInt(integer);
        } else if (value instanceof Double real) {
            begin(RecordKind.REAL);
            out.writeDouble(real);
        } else if (value instanceof Instant instant) {
            begin(RecordKind.INSTANT);
            out.writeLong(instant.getEpochSecond());
            out.writeInt(instant.getNano());
        } else if (value instanceof UUID id) {
            begin(RecordKind.ID);
            out.writeLong(id.getMostSignificantBits());
            out.writeLong(id.getLeastSignificantBits());
        } else if (value instanceof ZoneId zone) {
            begin(RecordKind.ZONE);
            out.writeUTF(zone.getId());
        } else if (value instanceof Enum<?> choice) {
            begin(RecordKind.CHOICE);
            write(choice.getDeclaringClass().getName());
            out.writeInt(choice.ordinal());
        } else if (value instanceof Record record) {
            writeParts(record);
        } else {
            writeMany(value);
        }
    }

    private void writeMany(Object value) throws IOException {
        if (value instanceof Optional<?> optional) {
            begin(optional.isPresent() ? RecordKind.SOMETHING : RecordKind.NOTHING);
            if (optional.isPresent()) {
                write(optional.get());
            }
        } else if (value instanceof List<?> list) {
            begin(RecordKind.LIST);
            out.writeInt(list.size());
            for (Object item : list) {
                write(item);
            }
        } else if (value instanceof Map<?, ?> map) {
            begin(RecordKind.MAP);
            out.writeInt(map.size());
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                write(entry.getKey());
                write(entry.getValue());
            }
        } else if (value instanceof Ledger ledger) {
            begin(RecordKind.LEDGER);
            write(ledger.entries());
        } else {
            throw new IllegalArgumentException("there is no kind for " + value.getClass());
        }
    }

    private void writeParts(Record record) throws IOException {
        begin(RecordKind.RECORD);
        write(record.getClass().getName());
        try {
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                write(part.getAccessor().invoke(record));
            }
        } catch (IllegalAccessException | InvocationTargetException hidden) {
            throw new IllegalArgumentException("not all parts are told by " + record.getClass(), hidden);
        }
    }

    private void begin(RecordKind kind) throws IOException {
        out.writeByte(kind.ordinal());
    }
}
