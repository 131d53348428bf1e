package org.moultwright.store.spool;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ReadingLog.Logged;

/** One line of a spool, with a checksum by which a line that a kill or a full disk cut short is known. */
sealed interface SpoolLine {
    String SEPARATOR = "\t";

    /** A reading of a probe. */
    record Heard(String probe, Logged logged) implements SpoolLine {}

    /** Which sensor speaks as a probe from an instant on. */
    record Identified(String probe, ProbeIdentity identity, Instant at) implements SpoolLine {}

    /** The line in words, its end included. */
    default String text() {
        String content = content();
        return content + SEPARATOR + checksum(content) + "\n";
    }

    /** What a line says, given without its end; empty if it is damaged. */
    static Optional<SpoolLine> parse(String line) {
        int end = line.lastIndexOf(SEPARATOR);
        if (end < 0 || !line.substring(end + 1).equals(checksum(line.substring(0, end)))) {
            return Optional.empty();
        }
        String[] cells = line.substring(0, end).split(SEPARATOR, -1);
        try {
            return cells[0].equals("reading") ? Optional.of(heard(cells)) : identified(cells);
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException notOurs) {
            return Optional.empty();
        }
    }

    private String content() {
        if (this instanceof Heard heard) {
            Reading reading = heard.logged().reading();
            return joined(
                    "reading",
                    heard.probe(),
                    "" + reading.takenAt().toEpochMilli(),
                    "" + reading.temperatureCelsius(),
                    "" + reading.humidityPercent(),
                    reading.quality().key(),
                    heard.logged().rawLine());
        }
        Identified identified = (Identified) this;
        return joined(
                "sensor",
                identified.probe(),
                "" + identified.at().toEpochMilli(),
                identified.identity().words());
    }

    private static Heard heard(String[] cells) {
        Reading reading = new Reading(
                Instant.ofEpochMilli(Long.parseLong(cells[2])),
                Double.parseDouble(cells[3]),
                Double.parseDouble(cells[4]),
                Quality.fromKey(cells[5]).orElseThrow(IllegalArgumentException::new));
        return new Heard(plain(cells[1]), new Logged(reading, plain(cells[6])));
    }

    private static Optional<SpoolLine> identified(String[] cells) {
        return ProbeIdentity.fromWords(plain(cells[3]))
                .map(identity ->
                        new Identified(plain(cells[1]), identity, Instant.ofEpochMilli(Long.parseLong(cells[2]))));
    }

    private static String joined(String... cells) {
        return String.join(
                SEPARATOR, List.of(cells).stream().map(SpoolLine::escaped).toList());
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }

    private static String plain(String escaped) {
        return escaped.translateEscapes();
    }

    private static String checksum(String content) {
        CRC32 checksum = new CRC32();
        checksum.update(content.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(checksum.getValue());
    }
}
