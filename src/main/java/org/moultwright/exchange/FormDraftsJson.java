package org.moultwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.workflow.FormDraft;

/** Forms begun and not saved as one document, to be read by hand if need be. */
final class FormDraftsJson implements DraftsForm<FormDraft> {
    static final String FORMAT = "moultwright-forms/1";

    @Override
    public byte[] print(List<FormDraft> drafts) throws JsonProcessingException {
        ObjectNode document = StrictJson.MAPPER.createObjectNode().put("format", FORMAT);
        ArrayNode forms = document.putArray("forms");
        drafts.forEach(draft -> {
            ObjectNode form = forms.addObject().put("form", draft.form()).put("about", draft.about());
            ObjectNode fields = form.putObject("fields");
            new TreeMap<>(draft.fields()).forEach(fields::put);
        });
        return StrictJson.MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(document);
    }

    @Override
    public List<FormDraft> read(String content) throws JsonProcessingException {
        List<FormDraft> drafts = new ArrayList<>();
        SheetDraftsJson.document(content, FORMAT).required("forms").forEach(form -> drafts.add(form(form)));
        return drafts;
    }

    private static FormDraft form(JsonNode form) {
        Map<String, String> fields = new LinkedHashMap<>();
        form.required("fields")
                .fieldNames()
                .forEachRemaining(key -> fields.put(key, SheetDraftsJson.text(form.required("fields"), key)));
        return new FormDraft(SheetDraftsJson.text(form, "form"), SheetDraftsJson.text(form, "about"), fields);
    }
}
