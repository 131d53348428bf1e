package org.moultwright.ui.finder;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.LineForms;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.RawWires;
import org.moultwright.workflow.ReadingLog;

/** An unknown port: what comes over it, which forms explain it, and what one of them reads when tried. */
public final class FinderViewModel {
    private static final int MOST_TRIED = 50;

    private final FinderDesk desk;
    private final BiConsumer<String, String> connect;
    private final Runnable close;
    private final StringProperty port = new SimpleStringProperty("");
    private final StringProperty settings = new SimpleStringProperty("");
    private final ObservableList<String> ports = FXCollections.observableArrayList();
    private final RawLines raw = new RawLines();
    private final ObservableList<LineForms.Proposal> proposals = FXCollections.observableArrayList();
    private final ObservableList<String> tried = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
    private final NewestQuestion<byte[], List<LineForms.Proposal>> finder;
    private final ProfileViewModel profile;
    private Runnable stop = () -> {};
    /** What was heard before the last start is told no more. */
    private int run;

    /**
     * @param connect leads to the form that connects a port read in a form of line
     * @param close leaves the page
     */
    public FinderViewModel(FinderDesk desk, BiConsumer<String, String> connect, Runnable close) {
        this.desk = desk;
        this.connect = connect;
        this.close = close;
        this.finder = new NewestQuestion<>(desk.runner(), desk.forms()::propose, this::proposed);
        this.profile = new ProfileViewModel(desk, this::look);
        settings.set(desk.wires().settings().get(0));
        desk.runner().run(progress -> desk.wires().ports(), this::portsFound);
    }

    StringProperty portProperty() {
        return port;
    }

    StringProperty settingsProperty() {
        return settings;
    }

    /** The ports that are there. */
    ObservableList<String> ports() {
        return ports;
    }

    List<String> settings() {
        return desk.wires().settings();
    }

    /** What comes, line by line. */
    ObservableList<String> lines() {
        return raw.lines();
    }

    /** The forms that explain what came, the best first. */
    ObservableList<LineForms.Proposal> proposals() {
        return proposals;
    }

    /** What a form that is tried reads, the latest first. */
    ObservableList<String> tried() {
        return tried;
    }

    /** Whether the port is open. */
    ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** How it is going, in a sentence. */
    ReadOnlyStringProperty toldProperty() {
        return told.getReadOnlyProperty();
    }

    /** The keeper's own profile. */
    ProfileViewModel profile() {
        return profile;
    }

    List<String> codes() {
        return desk.links().profiles();
    }

    /** Hears the port as it is. Nothing is said over the wire and nothing is kept. */
    void listen() {
        stop();
        raw.clear();
        proposals.clear();
        int mine = ++run;
        if (port.get().isBlank()) {
            told.set(Texts.say("Write or choose the port."));
            return;
        }
        RawWires.Hearing hearing = desk.wires().listen(port.get().strip(), settings.get(), new RawWires.Listener() {
            @Override
            public void heard(byte[] bytes) {
                desk.screen().execute(() -> came(mine, bytes));
            }

            @Override
            public void ended(AdvisedException fault) {
                desk.screen().execute(() -> refused(mine, fault));
            }
        });
        stop = hearing::close;
        busy.set(true);
        told.set(Texts.say("Listening. An instrument that speaks by itself is heard within a minute; one that must "
                + "be asked stays silent: try its form below."));
    }

    /** Reads the port in a form of line and shows what that gives; nothing is kept. */
    void tryForm(String words) {
        stop();
        tried.clear();
        int mine = ++run;
        if (port.get().isBlank()) {
            told.set(Texts.say("Write or choose the port."));
            return;
        }
        try {
            ProbeLinks.Link link = desk.links().open(new ProbeLine(port.get().strip(), words), new Trial(mine));
            stop = link::close;
            busy.set(true);
            told.set(Texts.say("Trying {0}.", words));
        } catch (IllegalArgumentException unknown) {
            told.set(Texts.say("It cannot be tried: {0}.", unknown.getMessage()));
        }
    }

    void stop() {
        run++;
        stop.run();
        stop = () -> {};
        if (busy.get()) {
            told.set(Texts.say("Stopped."));
        }
        busy.set(false);
    }

    /** Leads on to connecting the port in this form. */
    void use(String words) {
        stop();
        connect.accept(port.get().strip(), words);
    }

    void cancel() {
        stop();
        close.run();
    }

    /** Looks anew which forms explain what came, as after a profile was kept. */
    private void look() {
        if (raw.bytes().length > 0) {
            finder.ask(raw.bytes());
        }
    }

    private void came(int mine, byte[] bytes) {
        if (mine == run) {
            raw.add(bytes);
            look();
        }
    }

    private void refused(int mine, AdvisedException fault) {
        if (mine == run) {
            stop();
            told.set(fault.advice() + " (" + fault.code() + ")");
        }
    }

    private void proposed(Outcome<List<LineForms.Proposal>> outcome) {
        if (outcome instanceof Outcome.Done<List<LineForms.Proposal>> done) {
            proposals.setAll(done.value());
        } else if (outcome instanceof Outcome.Failed<List<LineForms.Proposal>> failed) {
            told.set(Texts.say(
                    "What came could not be looked at: {0}", failed.fault().getMessage()));
        }
    }

    private void portsFound(Outcome<List<String>> outcome) {
        if (outcome instanceof Outcome.Done<List<String>> done) {
            ports.setAll(done.value());
            Optional<String> first = ports.stream().findFirst();
            if (port.get().isEmpty()) {
                port.set(first.orElse(""));
            }
            told.set(
                    first.isEmpty()
                            ? Texts.say("No serial port is there now. Plug the instrument in, or write its port.")
                            : "");
        } else if (outcome instanceof Outcome.Failed<List<String>> failed) {
            told.set(Texts.say(
                    "The ports could not be listed: {0}", failed.fault().getMessage()));
        }
    }

    /** Hears a form that is tried. */
    private final class Trial implements ProbeListener {
        private final int mine;

        Trial(int mine) {
            this.mine = mine;
        }

        @Override
        public void heard(ReadingLog.Logged logged) {
            onScreen(() -> {
                tried.add(0, FinderWords.reading(logged.reading(), logged.rawLine()));
                if (tried.size() > MOST_TRIED) {
                    tried.remove(MOST_TRIED);
                }
            });
        }

        @Override
        public void changed(LinkState state) {
            onScreen(() -> told.set(FinderWords.state(state)));
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            // A trial keeps nothing, so that instants do not matter.
        }

        private void onScreen(Runnable deed) {
            desk.screen().execute(() -> {
                if (mine == run) {
                    deed.run();
                }
            });
        }
    }
}
