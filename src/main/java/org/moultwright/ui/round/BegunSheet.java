package org.moultwright.ui.round;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.Stage;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.SheetDraft;

/** A sheet and its draft: one written down from the other. */
final class BegunSheet {
    private BegunSheet() {}

    /** The sheet as it is typed so far; empty where nothing is. */
    static Optional<SheetDraft> draft(SheetViewModel fields) {
        return fields.basisProperty()
                .get()
                .map(basis -> new SheetDraft(
                        fields.factsProperty().get().brood(),
                        fields.factsProperty().get().tray(),
                        basis,
                        looks(fields),
                        fields.losses(),
                        fields.mouldProperty().get(),
                        fields.care(),
                        fields.noteProperty().get()));
    }

    /** Writes a draft on its tray's sheet. What is written there already goes with it, and nothing is lost of either. */
    static void write(SheetDraft draft, SheetViewModel fields, Vocabulary names) {
        if (fields.isBlank()) {
            fill(draft, fields);
        } else {
            SheetViewModel later = new SheetViewModel(fields.factsProperty().get());
            fill(draft, later);
            new LaterSheet(later, names).writeInto(fields);
        }
        fields.basisProperty().set(Optional.of(draft.basis()));
    }

    private static void fill(SheetDraft draft, SheetViewModel fields) {
        draft.looks()
                .forEach((stage, text) ->
                        fields.row(stage).ifPresent(row -> row.textProperty().set(text)));
        fields.losses().setAll(draft.losses());
        draft.mould().ifPresent(fields::tellMould);
        fields.care().addAll(draft.care());
        fields.noteProperty().set(draft.note());
    }

    private static Map<Stage, String> looks(SheetViewModel fields) {
        Map<Stage, String> looks = new EnumMap<>(Stage.class);
        List<StageRow> written =
                fields.rows().stream().filter(row -> !row.isBlank()).toList();
        written.forEach(row -> looks.put(row.stage(), row.textProperty().get()));
        return looks;
    }
}
