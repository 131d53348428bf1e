package org.moultwright.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.moultwright.domain.Stage;

/** The table the demo's counts come from, {@code demo-data/trays.csv}. Invented. */
final class DemoCounts {
    private DemoCounts() {}

    /** The rows of one tray, in order of date. */
    static List<Row> ofTray(Path table, String tray) throws IOException {
        List<String> lines = Files.readAllLines(table);
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            if (cells[1].equals(tray)) {
                rows.add(row(cells));
            }
        }
        return rows;
    }

    private static Row row(String[] cells) {
        Map<Stage, Integer> alive = new EnumMap<>(Stage.class);
        alive.put(Stage.EGG, Integer.valueOf(cells[4]));
        alive.put(Stage.POSTEMBRYO, Integer.valueOf(cells[5]));
        alive.put(Stage.INSTAR1, Integer.valueOf(cells[6]));
        alive.put(Stage.INSTAR2, Integer.valueOf(cells[7]));
        return new Row(
                LocalDate.parse(cells[2]),
                alive,
                Integer.parseInt(cells[8]),
                Integer.parseInt(cells[9]),
                Integer.parseInt(cells[10]),
                Integer.parseInt(cells[11]),
                losses(cells[12]));
    }

    /** "5 infertile/collapsed; 1 embryo died" */
    private static List<Loss> losses(String causes) {
        List<Loss> losses = new ArrayList<>();
        for (String cause : causes.isBlank() ? new String[0] : causes.split("; ")) {
            int space = cause.indexOf(' ');
            losses.add(new Loss(Integer.parseInt(cause.substring(0, space)), cause.substring(space + 1)));
        }
        return losses;
    }

    /** One check: what is alive in the tray before potting, what was taken out dead that day and in all. */
    record Row(
            LocalDate date,
            Map<Stage, Integer> alive,
            int deadRemoved,
            int deadInAll,
            int pottedAfterCount,
            int pottedInAll,
            List<Loss> losses) {

        int aliveInAll() {
            return alive.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** Animals lost, and the table's words for why. */
    record Loss(int count, String words) {}
}
