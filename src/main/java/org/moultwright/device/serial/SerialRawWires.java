package org.moultwright.device.serial;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.device.DeviceException;
import org.moultwright.device.DeviceException.Reason;
import org.moultwright.device.link.ByteSource;
import org.moultwright.device.profile.LineSettings;
import org.moultwright.device.profile.LineSettings.Parity;
import org.moultwright.language.Texts;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.RawWires;

/** Serial ports heard as they are. */
public final class SerialRawWires implements RawWires {
    private static final int MOST_BYTES = 4096;

    /** Common practice, no source: what small instruments are set to, the most usual first. */
    private static final Map<String, LineSettings> SETTINGS = new LinkedHashMap<>();

    static {
        for (int baud : new int[] {9600, 115_200, 19_200, 38_400, 57_600, 4800, 2400, 1200}) {
            SETTINGS.put(baud + " 8N1", new LineSettings(baud, 8, Parity.N, 1, false));
        }
        SETTINGS.put("9600 8E1", new LineSettings(9600, 8, Parity.E, 1, false));
        SETTINGS.put("19200 8E1", new LineSettings(19_200, 8, Parity.E, 1, false));
        SETTINGS.put("9600 7E1", new LineSettings(9600, 7, Parity.E, 1, false));
        SETTINGS.put("9600 8N1 DTR", new LineSettings(9600, 8, Parity.N, 1, true));
    }

    private final Path nativeFolder;

    /** @param nativeFolder a folder of this user's own, where the serial library unpacks its native part */
    public SerialRawWires(Path nativeFolder) {
        this.nativeFolder = nativeFolder;
    }

    @Override
    public List<String> ports() {
        NativeLibrary.loadFrom(nativeFolder);
        return new MachinePorts()
                .ports().stream().map(PortListing.PortSeen::name).toList();
    }

    @Override
    public List<String> settings() {
        return List.copyOf(SETTINGS.keySet());
    }

    @Override
    public Hearing listen(String port, String settings, Listener listener) {
        LineSettings chosen = SETTINGS.get(settings);
        if (chosen == null) {
            throw new IllegalArgumentException(
                    "settings is '%s' but must be one of %s".formatted(settings, settings()));
        }
        Wire wire = new Wire(listener);
        Thread thread = new Thread(() -> wire.hear(nativeFolder, chosen, port), "listening to " + port);
        thread.setDaemon(true);
        thread.start();
        return () -> wire.end(thread);
    }

    /** One port, heard until it is told to end. */
    private static final class Wire {
        private final Listener listener;
        private volatile boolean ended;

        Wire(Listener listener) {
            this.listener = listener;
        }

        void hear(Path nativeFolder, LineSettings settings, String port) {
            try {
                NativeLibrary.loadFrom(nativeFolder);
                try (ByteSource source = new SerialOpening(settings).open(port)) {
                    hear(source, port);
                }
            } catch (DeviceException fault) {
                tell(fault);
            }
        }

        private void hear(ByteSource source, String port) {
            byte[] into = new byte[MOST_BYTES];
            while (!ended) {
                int count = source.read(into);
                if (count < 0) {
                    throw new DeviceException(Reason.MISSING, Texts.say("The port {0} is gone.", port));
                }
                if (count > 0 && !ended) {
                    listener.heard(Arrays.copyOf(into, count));
                }
            }
        }

        private void tell(AdvisedException fault) {
            if (!ended) {
                listener.ended(fault);
            }
        }

        void end(Thread thread) {
            ended = true;
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
