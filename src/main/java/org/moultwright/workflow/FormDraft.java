package org.moultwright.workflow;

import java.util.Map;
import org.moultwright.domain.Require;

/**
 * A form that was begun and is not saved, exactly as it was typed.
 *
 * @param form which form, such as {@code sac}
 * @param about what it is about, such as a brood's code; possibly empty
 * @param fields what stands in each field, by the field's key; empty ones are left out
 */
public record FormDraft(String form, String about, Map<String, String> fields) {
    public FormDraft {
        Require.text("form", form);
        fields = Map.copyOf(fields);
    }
}
