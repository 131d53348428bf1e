package org.moultwright.device.serial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.file.WholeFile;
import org.moultwright.workflow.KnownLines;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;

/**
 * The lines of this machine in a file of text: probe, port, profile and identity, a tab between them. It is
 * always whole. Safe to share between threads.
 */
public final class KnownLinesFile implements KnownLines {
    private static final String TAB = "\t";
    private static final int CELLS = 4;

    private final Path file;

    public KnownLinesFile(Path file) {
        this.file = file.toAbsolutePath();
    }

    @Override
    public synchronized Map<String, ProbeLine> all() {
        if (Files.notExists(file)) {
            return Map.of();
        }
        try {
            Map<String, ProbeLine> lines = new TreeMap<>();
            for (String row : Files.readAllLines(file)) {
                read(row.split(TAB, -1), lines);
            }
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized void remember(String probe, ProbeLine line) {
        Map<String, ProbeLine> lines = new TreeMap<>(all());
        if (!line.equals(lines.put(probe, line))) {
            write(lines);
        }
    }

    @Override
    public synchronized void forget(String probe) {
        Map<String, ProbeLine> lines = new TreeMap<>(all());
        if (lines.remove(probe) != null) {
            write(lines);
        }
    }

    private static void read(String[] cells, Map<String, ProbeLine> lines) {
        if (cells.length != CELLS || cells[1].isBlank() || cells[2].isBlank()) {
            return;
        }
        ProbeIdentity identity = ProbeIdentity.fromWords(cells[3]).orElse(ProbeIdentity.UNKNOWN);
        lines.put(cells[0], new ProbeLine(cells[1], cells[2], identity));
    }

    private void write(Map<String, ProbeLine> lines) {
        List<String> rows = lines.entrySet().stream()
                .map(line -> String.join(
                        TAB,
                        line.getKey(),
                        line.getValue().port(),
                        line.getValue().profile(),
                        line.getValue().identity().words()))
                .toList();
        try {
            WholeFile.write(file, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
