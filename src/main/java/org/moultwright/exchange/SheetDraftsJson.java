package org.moultwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.RoundSheet;
import org.moultwright.workflow.SheetDraft;

/** Sheets begun and not saved as one document, to be read by hand if need be. */
final class SheetDraftsJson implements DraftsForm<SheetDraft> {
    static final String FORMAT = "moultwright-sheets/1";

    @Override
    public byte[] print(List<SheetDraft> drafts) throws JsonProcessingException {
        ObjectNode document = StrictJson.MAPPER.createObjectNode().put("format", FORMAT);
        ArrayNode sheets = document.putArray("sheets");
        drafts.forEach(draft -> print(draft, sheets.addObject()));
        return StrictJson.MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(document);
    }

    @Override
    public List<SheetDraft> read(String content) throws JsonProcessingException {
        List<SheetDraft> drafts = new ArrayList<>();
        document(content, FORMAT).required("sheets").forEach(sheet -> drafts.add(sheet(sheet)));
        return drafts;
    }

    /** A document of this format. */
    static JsonNode document(String content, String format) throws JsonProcessingException {
        JsonNode document = StrictJson.MAPPER.readTree(content);
        if (!document.path("format").asText().equals(format)) {
            throw new IllegalArgumentException("format must be " + format);
        }
        return document;
    }

    private static void print(SheetDraft draft, ObjectNode sheet) {
        sheet.put("brood", draft.brood()).put("tray", draft.tray());
        sheet.put("begunAt", draft.basis().begunAt().toString())
                .put("alive", draft.basis().alive());
        draft.basis().lastWritten().ifPresent(at -> sheet.put("lastWritten", at.toString()));
        ObjectNode looks = sheet.putObject("looks");
        new EnumMap<>(draft.looks()).forEach((stage, text) -> looks.put(stage.key(), text));
        ArrayNode dead = sheet.putArray("dead");
        draft.losses()
                .forEach(loss -> dead.addObject()
                        .put("stage", loss.stage().key())
                        .put("cause", loss.cause().words())
                        .put("count", loss.count()));
        draft.mould()
                .ifPresent(mould -> sheet.putObject("mould")
                        .put("where", mould.where())
                        .put("extent", mould.extent())
                        .put("action", mould.action()));
        ArrayNode care = sheet.putArray("care");
        new TreeSet<>(draft.care()).forEach(care::add);
        sheet.put("note", draft.note());
    }

    private static SheetDraft sheet(JsonNode sheet) {
        return new SheetDraft(
                text(sheet, "brood"),
                text(sheet, "tray"),
                new SheetDraft.Basis(
                        instant(sheet, "begunAt"),
                        count(sheet, "alive"),
                        sheet.has("lastWritten") ? Optional.of(instant(sheet, "lastWritten")) : Optional.empty()),
                looks(sheet.required("looks")),
                losses(sheet.required("dead")),
                mould(sheet.path("mould")),
                care(sheet.required("care")),
                text(sheet, "note"));
    }

    private static Map<Stage, String> looks(JsonNode looks) {
        Map<Stage, String> typed = new EnumMap<>(Stage.class);
        looks.fieldNames().forEachRemaining(key -> typed.put(stage(key), text(looks, key)));
        return typed;
    }

    private static List<RoundSheet.Loss> losses(JsonNode dead) {
        List<RoundSheet.Loss> losses = new ArrayList<>();
        dead.forEach(loss -> losses.add(
                new RoundSheet.Loss(stage(text(loss, "stage")), new Cause(text(loss, "cause")), count(loss, "count"))));
        return losses;
    }

    private static Optional<RoundSheet.Mould> mould(JsonNode mould) {
        return mould.isMissingNode()
                ? Optional.empty()
                : Optional.of(new RoundSheet.Mould(text(mould, "where"), text(mould, "extent"), text(mould, "action")));
    }

    private static Set<String> care(JsonNode care) {
        Set<String> done = new TreeSet<>();
        care.forEach(what -> done.add(what.asText()));
        return done;
    }

    private static Stage stage(String key) {
        return Stage.fromKey(key).orElseThrow(() -> new IllegalArgumentException("there is no stage " + key));
    }

    private static Instant instant(JsonNode node, String field) {
        try {
            return Instant.parse(text(node, field));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(field + " must be an instant", e);
        }
    }

    static String text(JsonNode node, String field) {
        JsonNode value = node.required(field);
        if (!value.isTextual()) {
            throw new IllegalArgumentException(field + " must be a text");
        }
        return value.textValue();
    }

    private static int count(JsonNode node, String field) {
        JsonNode value = node.required(field);
        if (!value.canConvertToInt() || !value.isIntegralNumber()) {
            throw new IllegalArgumentException(field + " must be a whole number");
        }
        return value.intValue();
    }
}
