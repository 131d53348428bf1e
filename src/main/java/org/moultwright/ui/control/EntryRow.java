package org.moultwright.ui.control;

import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * A row with fields too narrow for a sentence: whatever they have to say stands beneath the row, as wide as that. While
 * there is nothing to say it takes no room.
 */
public final class EntryRow extends VBox {
    /** @param fields those in the row; what several say stands one after the other */
    public EntryRow(Node row, EntryField... fields) {
        Beneath beneath = new Beneath(this, row, row);
        List<ReadOnlyStringProperty> sentences =
                List.of(fields).stream().map(EntryField::saidByRow).toList();
        sentences.forEach(sentence -> sentence.addListener(changed -> beneath.say(sentences.stream()
                .map(ObservableStringValue::get)
                .filter(said -> !said.isEmpty())
                .distinct()
                .collect(Collectors.joining(" ")))));
    }
}
