package org.moultwright.exchange;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * Reads and writes JSON, no field twice. Made by whoever reads the first document, aside: it is costly to make, and a desk
 * opens without.
 */
final class StrictJson {
    static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private StrictJson() {}
}
