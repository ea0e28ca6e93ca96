package wickbench.bench.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.BooleanControl;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.Port;
import javax.sound.sampled.SourceDataLine;

/** Short tones made here, one after the other, on a thread of their own that goes when nothing rings. */
final class Tones implements Bell {
    private static final float RATE = 22_050;
    private static final double LOUD = 0.6;

    private final ExecutorService thread = thread();

    /** A tone, or silence where the pitch is 0. */
    private record Tone(double hertz, int millis) {}

    private static ExecutorService thread() {
        ThreadPoolExecutor one = new ThreadPoolExecutor(1, 1, 2, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), act -> {
            Thread made = new Thread(act, "tones");
            made.setDaemon(true);
            return made;
        });
        one.allowCoreThreadTimeOut(true);
        return one;
    }

    @Override
    public void ring(Sound sound) {
        thread.execute(() -> play(pcm(tones(sound))));
    }

    @Override
    public Optional<Trouble> trouble() {
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format())) {
            line.open();
            return muted() ? Optional.of(Trouble.MUTED) : Optional.empty();
        } catch (LineUnavailableException | IllegalArgumentException e) {
            return Optional.of(Trouble.NO_DEVICE);
        }
    }

    private static List<Tone> tones(Sound sound) {
        return switch (sound) {
            case OPENS ->
                List.of(
                        new Tone(660, 130),
                        new Tone(880, 200),
                        new Tone(0, 120),
                        new Tone(660, 130),
                        new Tone(880, 200));
            case CLOSES_SOON ->
                List.of(
                        new Tone(990, 100),
                        new Tone(0, 70),
                        new Tone(990, 100),
                        new Tone(0, 70),
                        new Tone(990, 100),
                        new Tone(0, 70),
                        new Tone(990, 100));
            case MISSED -> List.of(new Tone(330, 300), new Tone(0, 80), new Tone(262, 500));
            case STEP -> List.of(new Tone(587, 180));
            case TRIAL -> List.of(new Tone(523, 150), new Tone(659, 150), new Tone(784, 250));
        };
    }

    private static AudioFormat format() {
        return new AudioFormat(RATE, 16, 1, true, false);
    }

    private static void play(byte[] sound) {
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format())) {
            line.open();
            line.start();
            line.write(sound, 0, sound.length);
            line.drain();
        } catch (LineUnavailableException | IllegalArgumentException e) {
            // said before the run by trouble(); the band across the page says what the tone would
            Thread.currentThread().setName("tones (unheard)");
        }
    }

    private static byte[] pcm(List<Tone> tones) {
        byte[][] parts = tones.stream().map(Tones::pcm).toArray(byte[][]::new);
        byte[] all = new byte[Arrays.stream(parts).mapToInt(part -> part.length).sum()];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }

    private static byte[] pcm(Tone tone) {
        int count = (int) (RATE * tone.millis() / 1000);
        byte[] samples = new byte[2 * count];
        for (int i = 0; i < count; i++) {
            // soft at both ends, so that it does not click
            double soft = Math.min(1, Math.min(i, count - i) / (RATE * 0.008));
            short value = (short) (Short.MAX_VALUE * LOUD * soft * Math.sin(2 * Math.PI * tone.hertz() * i / RATE));
            samples[2 * i] = (byte) value;
            samples[2 * i + 1] = (byte) (value >> 8);
        }
        return samples;
    }

    /** Tells whether every way out that can be asked says that it is silent. */
    private static boolean muted() {
        List<Boolean> said = Arrays.stream(AudioSystem.getMixerInfo())
                .map(AudioSystem::getMixer)
                .flatMap(Tones::mutes)
                .toList();
        return !said.isEmpty() && said.stream().allMatch(Boolean::booleanValue);
    }

    private static Stream<Boolean> mutes(Mixer mixer) {
        return Stream.of(Port.Info.SPEAKER, Port.Info.HEADPHONE, Port.Info.LINE_OUT)
                .filter(mixer::isLineSupported)
                .flatMap(port -> mute(mixer, port).stream());
    }

    private static Optional<Boolean> mute(Mixer mixer, Line.Info port) {
        try (Line line = mixer.getLine(port)) {
            line.open();
            return line.isControlSupported(BooleanControl.Type.MUTE)
                    ? Optional.of(((BooleanControl) line.getControl(BooleanControl.Type.MUTE)).getValue())
                    : Optional.empty();
        } catch (LineUnavailableException e) {
            // a way out that is taken by another program says nothing of itself
            return Optional.empty();
        }
    }
}
