package org.moultwright.ui.round;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;

/**
 * What was written on a tray's next sheet while its earlier one came back, because it could not be saved or
 * was undone. Nothing of either is lost: where both say something else, the later stands and the earlier
 * goes into the note.
 */
final class LaterSheet {
    private final SheetViewModel later;
    private final Vocabulary names;

    LaterSheet(SheetViewModel later, Vocabulary names) {
        this.later = later;
        this.names = names;
    }

    void writeInto(SheetViewModel earlier) {
        List<String> outdone = new ArrayList<>();
        for (StageRow row : later.rows()) {
            earlier.row(row.stage())
                    .filter(own -> !row.isBlank() && !own.look().equals(row.look()))
                    .ifPresent(own -> {
                        if (!own.isBlank()) {
                            outdone.add(names.label(row.stage()) + " "
                                    + own.textProperty().get());
                        }
                        own.textProperty().set(row.textProperty().get());
                    });
        }
        later.losses().forEach(loss -> earlier.take(loss.stage(), loss.cause(), loss.count()));
        earlier.care().addAll(later.care());
        later.mouldProperty().get().ifPresent(found -> {
            earlier.mouldProperty()
                    .get()
                    .filter(own -> !own.equals(found))
                    .ifPresent(own -> outdone.add(Texts.say(
                            "mould on {0}, {1}, {2}",
                            Texts.say(own.where()), Texts.say(own.extent()), Texts.say(own.action()))));
            earlier.tellMould(found);
        });
        String before = outdone.isEmpty() ? "" : Texts.say("Written first: {0}.", String.join("; ", outdone));
        earlier.noteProperty()
                .set(joined(earlier.noteProperty().get(), later.noteProperty().get(), before));
    }

    private static String joined(String... parts) {
        return String.join(
                "\n", Stream.of(parts).filter(part -> !part.isBlank()).toList());
    }
}
