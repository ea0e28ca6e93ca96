package wickbench.widgets;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.graphics.RGB;

/**
 * All colours of one theme.
 *
 * <p>Meaning colours are those of Okabe and Ito, "Color Universal Design" (2008), which people with the common colour vision
 * deficiencies tell apart. Words reach a contrast of 4.5 to 1 on every ground they stand on (WCAG 2.2, 1.4.3).
 *
 * @param dark whether light words stand on a dark ground
 * @param ground behind everything
 * @param surface cards and tables
 * @param field fields to fill in
 * @param raised rail and bars
 * @param button ground of buttons
 * @param edge lines between things
 * @param ink words
 * @param quiet less important words
 * @param accent the one colour of acting: focus, links, the main button
 * @param onAccent words on the accent
 * @param selection ground of selected rows
 * @param onSelection words on it
 * @param stripe ground of every other row and of table heads
 * @param tones the colours of each meaning
 */
public record Palette(
        boolean dark,
        RGB ground,
        RGB surface,
        RGB field,
        RGB raised,
        RGB button,
        RGB edge,
        RGB ink,
        RGB quiet,
        RGB accent,
        RGB onAccent,
        RGB selection,
        RGB onSelection,
        RGB stripe,
        Map<Meaning, Tone> tones) {

    public Palette {
        tones = Map.copyOf(tones);
        if (tones.size() != Meaning.values().length) {
            throw new IllegalArgumentException("a palette has a tone for each meaning");
        }
    }

    public static Palette ofLight() {
        return new Palette(
                false,
                rgb(0xF4F6F8),
                rgb(0xFFFFFF),
                rgb(0xFFFFFF),
                rgb(0xE9EDF1),
                rgb(0xFAFBFC),
                rgb(0xCBD3DB),
                rgb(0x1B2530),
                rgb(0x4E5C6A),
                rgb(0x00629C),
                rgb(0xFFFFFF),
                rgb(0xD3E6F4),
                rgb(0x0F1A24),
                rgb(0xF0F3F6),
                tones(
                        tone(0x8A96A3, 0x4A5764, 0xE8ECF0),
                        tone(0x009E73, 0x00624A, 0xDDF2EA),
                        tone(0xD55E00, 0x9A3B00, 0xFCE6D8),
                        tone(0xCC79A7, 0x8A2F63, 0xF8E4EF),
                        tone(0xE69F00, 0x7A4F00, 0xFDF0D0),
                        tone(0x56B4E9, 0x005A8E, 0xDFF0FB)));
    }

    public static Palette ofDark() {
        return new Palette(
                true,
                rgb(0x171C22),
                rgb(0x1F262E),
                rgb(0x2A333C),
                rgb(0x12161B),
                rgb(0x2C353F),
                rgb(0x3A4550),
                rgb(0xE8EDF2),
                rgb(0xADB8C4),
                rgb(0x6FC0EE),
                rgb(0x0B1218),
                rgb(0x274A63),
                rgb(0xFFFFFF),
                rgb(0x262E37),
                tones(
                        tone(0x8A96A3, 0xC1CBD5, 0x2C353E),
                        tone(0x009E73, 0x5FD6B0, 0x14382E),
                        tone(0xD55E00, 0xFF9F5C, 0x442412),
                        tone(0xCC79A7, 0xEFA9CE, 0x42243A),
                        tone(0xE69F00, 0xFFC24A, 0x3D2E0C),
                        tone(0x56B4E9, 0x86CCF5, 0x173448)));
    }

    public Tone tone(Meaning meaning) {
        return tones.get(meaning);
    }

    private static Map<Meaning, Tone> tones(Tone... inOrder) {
        Map<Meaning, Tone> tones = new EnumMap<>(Meaning.class);
        List.of(Meaning.values()).forEach(meaning -> tones.put(meaning, inOrder[meaning.ordinal()]));
        return tones;
    }

    private static Tone tone(int mark, int ink, int wash) {
        return new Tone(rgb(mark), rgb(ink), rgb(wash));
    }

    private static RGB rgb(int hex) {
        return new RGB(hex >> 16 & 0xFF, hex >> 8 & 0xFF, hex & 0xFF);
    }
}
