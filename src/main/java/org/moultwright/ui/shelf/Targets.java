package org.moultwright.ui.shelf;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;

/** Places something can go to, narrowed down by what is typed. The first that fits it is chosen until another is; none before. */
final class Targets {
    private List<Target> all;
    private final StringProperty typed = new SimpleStringProperty("");
    private final ObservableList<Target> fitting = FXCollections.observableArrayList();
    private final ObjectProperty<@Nullable Target> chosen = new SimpleObjectProperty<>();

    Targets(List<Target> all) {
        this.all = all;
        typed.addListener((observed, before, now) -> narrow());
        narrow();
    }

    /** Offers these from now on; one chosen stays so while it is among them, whatever is told of it. */
    void offer(List<Target> others) {
        if (!others.equals(all)) {
            Optional<Target> before = chosen();
            all = others;
            narrow();
            before.flatMap(chosen -> fitting.stream()
                            .filter(target -> target.code().equals(chosen.code()))
                            .findFirst())
                    .ifPresent(chosen::set);
        }
    }

    StringProperty typedProperty() {
        return typed;
    }

    ObservableList<Target> fitting() {
        return fitting;
    }

    ObjectProperty<@Nullable Target> chosenProperty() {
        return chosen;
    }

    /** The target chosen; none where nothing fits what was typed. */
    Optional<Target> chosen() {
        return Optional.ofNullable(chosen.get());
    }

    /** Chooses the target so many further on. */
    void step(int by) {
        if (!fitting.isEmpty()) {
            int at = fitting.indexOf(chosen.get()) + by;
            chosen.set(fitting.get(Math.max(0, Math.min(fitting.size() - 1, at))));
        }
    }

    private void narrow() {
        String words = typed.get().strip().toLowerCase(Locale.ROOT);
        List<Target> fit = all.stream()
                .filter(target -> target.words().toLowerCase(Locale.ROOT).contains(words))
                .toList();
        fitting.setAll(fit);
        Optional<Target> exact = fit.stream()
                .filter(target -> target.title().toLowerCase(Locale.ROOT).equals(words))
                .findFirst();
        chosen.set(exact.orElse(words.isEmpty() || fit.isEmpty() ? null : fit.get(0)));
    }

    /**
     * A place to choose.
     *
     * @param code the container's code, empty for no container
     * @param detail what tells it from others
     */
    record Target(Optional<String> code, String title, String detail) {
        String words() {
            return title + " " + detail;
        }
    }
}
