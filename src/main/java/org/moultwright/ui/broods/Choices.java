package org.moultwright.ui.broods;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Lets the arrow keys of a field go through what fits the letters typed. */
final class Choices {
    private final TextField input;
    private final Supplier<List<String>> choices;
    private String typed;
    private boolean choosing;

    Choices(TextField input, Supplier<List<String>> choices) {
        this.input = input;
        this.choices = choices;
        this.typed = input.getText();
        input.textProperty().addListener((observed, before, now) -> {
            if (!choosing) {
                typed = now;
            }
        });
        input.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
                step(event.getCode() == KeyCode.DOWN ? 1 : -1);
                event.consume();
            }
        });
    }

    /** "↓ box 1, box 2"; empty where nothing more fits. */
    String words(int most) {
        List<String> fitting = fitting();
        if (fitting.isEmpty() || fitting.equals(List.of(input.getText()))) {
            return "";
        }
        String more = fitting.size() > most ? ", …" : "";
        return "↓ " + fitting.stream().limit(most).collect(Collectors.joining(", ")) + more;
    }

    private void step(int by) {
        List<String> fitting = fitting();
        if (fitting.isEmpty()) {
            return;
        }
        int at = fitting.indexOf(input.getText());
        int next = at < 0 ? (by > 0 ? 0 : fitting.size() - 1) : Math.floorMod(at + by, fitting.size());
        choosing = true;
        input.setText(fitting.get(next));
        input.end();
        choosing = false;
    }

    private List<String> fitting() {
        String begin = typed.strip().toLowerCase(Locale.ROOT);
        return choices.get().stream()
                .filter(choice -> choice.toLowerCase(Locale.ROOT).startsWith(begin))
                .toList();
    }
}
