package org.moultwright.exchange;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * Names rows by what stands in them, so that the same folder read twice gives the same rows. Rows alike to
 * the letter are told apart by their number. Not safe to share.
 */
final class RowIds {
    private final String brood;
    private final Map<String, Integer> seen = new HashMap<>();

    RowIds(String brood) {
        this.brood = brood;
    }

    UUID of(String file, Object... cells) {
        StringBuilder content = new StringBuilder(brood).append('\n').append(file);
        for (Object cell : cells) {
            content.append('\n').append(cell);
        }
        int ordinal = seen.merge(content.toString(), 1, Integer::sum);
        content.append('\n').append(ordinal);
        return UUID.nameUUIDFromBytes(content.toString().getBytes(StandardCharsets.UTF_8));
    }
}
