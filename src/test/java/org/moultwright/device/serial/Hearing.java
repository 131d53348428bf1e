package org.moultwright.device.serial;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog.Logged;

/** Writes down what a link tells, to be waited for. */
final class Hearing implements ProbeListener {
    private final List<Logged> heard = new CopyOnWriteArrayList<>();
    private final List<LinkState> states = new CopyOnWriteArrayList<>();
    private final List<ProbeIdentity> identities = new CopyOnWriteArrayList<>();
    private int waitedFor;

    @Override
    public void heard(Logged logged) {
        heard.add(logged);
    }

    @Override
    public void changed(LinkState state) {
        states.add(state);
    }

    @Override
    public void clockStepped(Instant seenAt, Duration by) {}

    void awaitLines(int count) {
        Await.until(count + " lines are heard, of " + heard, () -> heard.size() >= count);
    }

    /** Waits until such a state is told, after the one last waited for. */
    void awaitState(Class<? extends LinkState> wanted) {
        Await.until(wanted.getSimpleName() + " is told", () -> {
            while (waitedFor < states.size()) {
                if (wanted.isInstance(states.get(waitedFor++))) {
                    return true;
                }
            }
            return false;
        });
    }

    @Override
    public void identified(ProbeIdentity identity) {
        identities.add(identity);
    }

    List<ProbeIdentity> identities() {
        return identities;
    }

    List<LinkState> states() {
        return states;
    }

    List<Logged> logged() {
        return heard;
    }

    List<String> lines() {
        return heard.stream().map(Logged::rawLine).toList();
    }

    List<Double> temperaturesCelsius() {
        return heard.stream()
                .map(logged -> logged.reading().temperatureCelsius())
                .toList();
    }

    LinkState.Refused refusal() {
        return states.stream()
                .filter(LinkState.Refused.class::isInstance)
                .map(LinkState.Refused.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
