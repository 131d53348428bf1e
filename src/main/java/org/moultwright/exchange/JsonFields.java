package org.moultwright.exchange;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.DateTimeException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.moultwright.language.Texts;

/**
 * A JSON document whose fields are asked for by pointer and form. What is not as expected is told to the
 * problems with its line.
 */
final class JsonFields {
    private final String file;
    private final JsonNode root;
    private final Map<String, Integer> lines;
    private final Problems problems;

    private JsonFields(String file, JsonNode root, Map<String, Integer> lines, Problems problems) {
        this.file = file;
        this.root = root;
        this.lines = lines;
        this.problems = problems;
    }

    /** Reads a document; empty, and told of, where it is no JSON object. */
    static Optional<JsonFields> parse(String file, String content, Problems problems) throws IOException {
        try {
            JsonNode root = StrictJson.MAPPER.readTree(content);
            if (root != null && root.isObject()) {
                return Optional.of(new JsonFields(file, root, lines(content), problems));
            }
            problems.add(file, 1, "", content, Texts.say("one JSON object"));
        } catch (JsonProcessingException fault) {
            long line = fault.getLocation() == null ? 0 : fault.getLocation().getLineNr();
            problems.add(file, line, "", "", Texts.say("JSON; {0}", said(fault)));
        }
        return Optional.empty();
    }

    /** What the reader says of it, without the marks by which it tells where: the line is told beside. */
    private static String said(JsonProcessingException fault) {
        return fault.getOriginalMessage().replaceFirst(" \\(start marker at .*", "");
    }

    JsonNode at(String pointer) {
        return root.at(pointer);
    }

    boolean has(String pointer) {
        JsonNode node = at(pointer);
        return !node.isMissingNode() && !node.isNull();
    }

    /** A text of some form; empty, and told of, where it is missing or of another. */
    <T> Optional<T> text(String pointer, String expected, Function<String, T> form) {
        JsonNode node = at(pointer);
        try {
            if (node.isTextual() && !node.textValue().isBlank()) {
                return Optional.of(form.apply(node.textValue()));
            }
        } catch (DateTimeException | IllegalArgumentException notOfThisForm) {
            // Told of below, like a value of another type.
        }
        return refuse(pointer, expected);
    }

    /** A number within limits; empty, and told of, where it is missing or beyond them. */
    Optional<Double> number(String pointer, double lowest, double highest) {
        JsonNode node = at(pointer);
        double value = node.asDouble();
        boolean fits = node.isNumber() && value >= lowest && value <= highest;
        return fits ? Optional.of(value) : refuse(pointer, Texts.say("a number within {0} and {1}", lowest, highest));
    }

    <T> Optional<T> refuse(String pointer, String expected) {
        JsonNode node = at(pointer);
        String value = node.isMissingNode() ? "" : node.toString();
        problems.add(file, lines.getOrDefault(pointer, 1), pointer, value, expected);
        return Optional.empty();
    }

    private static Map<String, Integer> lines(String content) throws IOException {
        Map<String, Integer> lines = new HashMap<>();
        try (JsonParser parser = StrictJson.MAPPER.createParser(content)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                JsonPointer pointer = parser.getParsingContext().pathAsPointer();
                lines.putIfAbsent(
                        pointer.toString(), parser.currentTokenLocation().getLineNr());
            }
        }
        return lines;
    }
}
