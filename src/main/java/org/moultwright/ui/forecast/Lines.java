package org.moultwright.ui.forecast;

import java.util.List;
import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.moultwright.ui.control.Words;

/** Cards of lines that follow what they show. */
final class Lines {
    private Lines() {}

    /** One under the other, made anew whenever what they show changes. */
    static <T> VBox of(ObservableList<T> items, Function<T, List<? extends Node>> nodes) {
        VBox lines = new VBox();
        lines.getStyleClass().add("lines");
        Runnable show = () -> lines.getChildren()
                .setAll(items.stream()
                        .flatMap(item -> nodes.apply(item).stream())
                        .toList());
        items.addListener((ListChangeListener<T>) change -> show.run());
        show.run();
        return lines;
    }

    static Label sentence(String words) {
        return Words.wrapped(Words.plain(words));
    }
}
