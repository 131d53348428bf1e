package org.moultwright.device.profile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.Optional;

/**
 * An object in JSON as {@code ;name=value;name=value;}, with the names of the objects around it before
 * a point: {@code {"air":{"t":25.7}}} becomes {@code ;air.t=25.7;}. Characters in names and texts that could
 * pass for another name or value are replaced, so a text cannot forge one.
 */
final class FlatJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private FlatJson() {}

    /** The values of a line, empty if it is no single object in JSON. */
    static Optional<String> of(String line) {
        try (JsonParser parser = FACTORY.createParser(line)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            StringBuilder flat = new StringBuilder(";");
            do {
                if (parser.nextToken().isScalarValue()) {
                    flat.append(name(parser))
                            .append('=')
                            .append(harmless(parser.getText()))
                            .append(';');
                }
            } while (!parser.getParsingContext().inRoot());
            return parser.nextToken() == null ? Optional.of(flat.toString()) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static String name(JsonParser parser) {
        return harmless(parser.getParsingContext().pathAsPointer().toString().substring(1))
                .replace('/', '.');
    }

    private static String harmless(String text) {
        return text.replaceAll("[=;\\s\\p{Cntrl}]", "_");
    }
}
