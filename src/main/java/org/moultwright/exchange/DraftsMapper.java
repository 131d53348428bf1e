package org.moultwright.exchange;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Reads and writes drafts. Made by whoever reads the first one, aside: it is costly to make, and a desk opens without. */
final class DraftsMapper {
    static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private DraftsMapper() {}
}
