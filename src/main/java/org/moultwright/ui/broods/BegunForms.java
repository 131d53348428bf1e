package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.ui.draft.DraftKeeping;
import org.moultwright.workflow.FormDraft;

/** The forms that are begun and not saved: each is on disk as it is typed, until it is saved or dropped. */
final class BegunForms {
    private final DraftKeeping<FormDraft> keeping;
    private final ObservableList<FormDraft> begun = FXCollections.observableArrayList();

    BegunForms(BegunDesk<FormDraft> desk) {
        this.keeping = new DraftKeeping<>(desk);
        begun.setAll(desk.found());
    }

    ObservableList<FormDraft> begun() {
        return begun;
    }

    /** Why what is typed is not on the disk, in a sentence; empty while it is. */
    ReadOnlyStringProperty problemProperty() {
        return keeping.problemProperty();
    }

    Optional<FormDraft> find(String form, String about) {
        return begun.stream().filter(draft -> isOf(draft, form, about)).findFirst();
    }

    /** What stands in a form now; one with nothing in it is not begun. */
    void keep(FormDraft draft) {
        List<FormDraft> all = new ArrayList<>(begun);
        all.removeIf(other -> isOf(other, draft.form(), draft.about()));
        if (!draft.fields().isEmpty()) {
            all.add(draft);
        }
        if (!all.equals(begun)) {
            begun.setAll(all);
            keeping.keep(List.copyOf(all));
        }
    }

    void drop(String form, String about) {
        keep(new FormDraft(form, about, Map.of()));
    }

    private static boolean isOf(FormDraft draft, String form, String about) {
        return draft.form().equals(form) && draft.about().equals(about);
    }
}
