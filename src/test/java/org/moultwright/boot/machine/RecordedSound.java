package org.moultwright.boot.machine;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.spi.MixerProvider;
import org.jspecify.annotations.Nullable;

/** A sound card that writes down what is played. */
public final class RecordedSound extends MixerProvider {
    private static final Mixer.Info INFO = new Mixer.Info("recorder", "none", "writes down what is played", "1") {};
    private static final ByteArrayOutputStream PLAYED = new ByteArrayOutputStream();

    static byte[] played() {
        return PLAYED.toByteArray();
    }

    @Override
    public Mixer.Info[] getMixerInfo() {
        return new Mixer.Info[] {INFO};
    }

    @Override
    public Mixer getMixer(Mixer.Info info) {
        if (!INFO.equals(info)) {
            throw new IllegalArgumentException(info + " is not this one");
        }
        return as(Mixer.class, RecordedSound::answerAsMixer);
    }

    private static @Nullable Object answerAsMixer(Object self, Method asked, Object @Nullable [] with) {
        return switch (asked.getName()) {
            case "isLineSupported" ->
                with != null && ((Line.Info) with[0]).getLineClass().equals(SourceDataLine.class);
            case "getMaxLines" -> AudioSystem.NOT_SPECIFIED;
            case "getMixerInfo" -> INFO;
            case "getLine" -> as(SourceDataLine.class, RecordedSound::answerAsLine);
            default -> nothing(asked);
        };
    }

    private static @Nullable Object answerAsLine(Object self, Method asked, Object @Nullable [] with) {
        return switch (asked.getName()) {
            case "write" -> write(with);
            case "getLongFramePosition" -> (long) PLAYED.size() / Short.BYTES;
            default -> nothing(asked);
        };
    }

    private static int write(Object @Nullable [] with) {
        if (with == null) {
            return 0;
        }
        PLAYED.write((byte[]) with[0], (int) with[1], (int) with[2]);
        return (int) with[2];
    }

    private static @Nullable Object nothing(Method asked) {
        Class<?> wanted = asked.getReturnType();
        if (wanted == boolean.class) {
            return false;
        }
        return wanted == int.class ? (Object) 0 : null;
    }

    private static <T> T as(Class<T> wanted, InvocationHandler answers) {
        return wanted.cast(
                Proxy.newProxyInstance(RecordedSound.class.getClassLoader(), new Class<?>[] {wanted}, answers));
    }
}
