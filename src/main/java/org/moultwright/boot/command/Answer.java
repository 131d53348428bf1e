package org.moultwright.boot.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import picocli.CommandLine.Option;

/** Where a command answers that can do so in words or in JSON. */
final class Answer extends OutputOnly {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Option(names = "--json", description = "answer with one JSON document per line and nothing else")
    boolean json;

    void document(JsonNode document) {
        try {
            out().println(MAPPER.writeValueAsString(document));
            out().flush();
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of plain values could not be written", impossible);
        }
    }
}
