package org.moultwright.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.moultwright.language.Texts;

/**
 * The first row of a table: where each column stands.
 *
 * @param columns position by name
 * @param width how many columns there are, unknown ones among them
 */
record Header(Map<String, Integer> columns, int width) {

    /** The header of a table, or nothing where no row under it could be understood. */
    static Optional<Header> read(Table<?> table, CSVRecord header, Problems problems) {
        Map<String, Integer> columns = new HashMap<>();
        boolean sound = true;
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).strip();
            if (columns.putIfAbsent(name, i) != null) {
                problems.add(table.file(), 1, name, name, Texts.say("each column once"));
                sound = false;
            }
            if (!table.columns().contains(name)) {
                problems.notice("%s: the column '%s' is not part of the format and was passed over"
                        .formatted(table.file(), name));
            }
        }
        for (String needed : table.required()) {
            if (!columns.containsKey(needed)) {
                problems.add(table.file(), 1, needed, "", Texts.say("a column of this name in the header"));
                sound = false;
            }
        }
        return sound ? Optional.of(new Header(columns, header.size())) : Optional.empty();
    }
}
