package org.moultwright.ui.control;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/**
 * A field that takes only what may be typed there, with room beneath for the sentence that says what is
 * wrong. While there is nothing to say it takes no room.
 *
 * <p>What it does not take it says so of, until something else is written or the field is left. An entry that went on
 * after a sign that was not taken may not be what was meant: of that it says so until it is written anew. What would take
 * an entry before its sentence can have been read is held once.
 */
public class EntryField extends VBox {
    private final TextField input = new TextField();
    private final Beneath beneath = new Beneath(this, input, input);
    private final StringProperty problem = new SimpleStringProperty("");

    /** What stands beneath: what was not taken just now, else the problem. */
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    /** Whether the row around says it, for which the field is too narrow. */
    private boolean isSaidByRow;

    private final Typable typable;
    private final HeldOnce held = new HeldOnce(input, this::wasHeld);
    private NotTaken notTaken = NotTaken.NOTHING;
    private String marked = "";

    /**
     * @param name what a screen reader calls the field
     * @param typable what it takes
     */
    public EntryField(String name, Typable typable) {
        this.typable = typable;
        input.setAccessibleText(name);
        input.setTextFormatter(new TextFormatter<>(change -> takes(change) ? change : null));
        input.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused && !notTaken.isDoubtful()) {
                forgetRefused();
            }
        });
        input.addEventFilter(KeyEvent.KEY_PRESSED, this::letEscapeOut);
        problem.addListener((observed, before, now) -> say());
        said.addListener((observed, before, now) -> {
            if (!isSaidByRow) {
                beneath.say(now);
            }
            show();
        });
        getStyleClass().add("big-entry");
    }

    /** The field itself, for focus and keys. */
    public final TextField input() {
        return input;
    }

    public final StringProperty textProperty() {
        return input.textProperty();
    }

    /** What is wrong with the entry, in a sentence; empty when nothing is. */
    public final StringProperty problemProperty() {
        return problem;
    }

    /** Marks the entry as wrong, where the sentence stands beside for several of them; empty takes the mark away. */
    public final void mark(String sentence) {
        marked = sentence;
        show();
    }

    /** Leaves what is to be said to the row around, which is told of it; the field itself is only marked. */
    final ReadOnlyStringProperty saidByRow() {
        isSaidByRow = true;
        return said.getReadOnlyProperty();
    }

    /** Says no more of what was not taken. */
    protected final void forgetRefused() {
        tell(NotTaken.NOTHING);
    }

    private void wasHeld() {
        tell(notTaken.read());
    }

    /** It is for the page around, and a field that takes only some signs would keep it to itself. */
    private void letEscapeOut(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            fireEvent(event.copyFor(this, this));
            event.consume();
        }
    }

    /**
     * Tidies what is written, and says so where it is not taken. A sign typed after one that was not taken leaves that
     * said, whether it goes on or takes the place of what was selected: 1.5 would else have become 15, and -3 have become
     * 3 without a word.
     */
    private boolean takes(TextFormatter.Change change) {
        if (!change.isContentChange()) {
            return true;
        }
        tidy(change);
        boolean isTaken = typable.takes(change.getControlNewText());
        boolean isAdded = change.getRangeStart() == change.getRangeEnd()
                && !change.getControlText().isEmpty();
        boolean isOneSign = change.getText().length() == 1;
        if (!isTaken) {
            tell(notTaken.and(typable.refusal(), isOneSign));
        } else if (isAdded || (notTaken.isOneSign() && isOneSign)) {
            tell(notTaken.goneOn());
        } else {
            tell(NotTaken.NOTHING);
        }
        return isTaken;
    }

    private void tidy(TextFormatter.Change change) {
        String tidied = typable.tidied().apply(change.getText());
        if (!tidied.equals(change.getText())) {
            change.setText(tidied);
            int end = change.getRangeStart() + tidied.length();
            change.selectRange(end, end);
        }
    }

    private void tell(NotTaken now) {
        notTaken = now;
        held.hold(now.isUnread());
        say();
    }

    private void say() {
        said.set(notTaken.sentence().isEmpty() ? problem.get() : notTaken.sentence());
    }

    private void show() {
        beneath.mark(said.get().isEmpty() ? marked : said.get());
    }
}
