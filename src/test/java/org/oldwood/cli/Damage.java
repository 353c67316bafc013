package org.oldwood.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages a good file, by octets or by words, one to three times. Seeded: the same every time. */
final class Damage {
    private static final Pattern WORD = Pattern
            .compile("\"[^\"\\\\]*+(?:\\\\.[^\"\\\\]*+)*+\"|-?[0-9][0-9.eE+-]*|true|false|null|[\\[\\]{}:,;=]");

    private static final List<String> NUMBERS = List.of("0", "-1", "1", "0.5", "-0.0", "1e308", "-1e308", "1e-320",
            "1e999", "999999999999999999999", "2147483648", "0.1", "366", "-40", "NaN", "007", "1.", "100000", "1e9");

    private static final List<String> TEXTS = List.of("\"\"", "\" \"", "\"../../../etc/passwd\"", "\"\\u0000\"",
            "\"\\ud83e\"", "\"2026-02-30\"", "\"-999999999-01-01\"", "\"+999999999-12-31\"", "\"0000-01-01\"",
            "\"9999-12-31\"", "\"02-29\"", "\"02-30\"", "\"stool\"", "\"blackcurrant\"", "\"cordon\"", "\"dormant\"",
            "\"\uD83E\uDED0\"", "\"%s%n${x}\"", "\"1=5,4+=3\"", "\"2026-11-20\"", "\"age\"", "\"Pacific/Kiritimati\"",
            "\"" + "x".repeat(5000) + "\"");

    private static final List<String> OTHERS = List.of("null", "true", "false", "[]", "{}", "[[]]", "{\"a\": 1}", "",
            "[".repeat(150));

    private final Random random;

    Damage(long seed) { random = new Random(seed); }

    byte[] of(byte[] good) {
        byte[] damaged = good;
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            damaged = random.nextInt(4) == 0 ? octets(damaged) : words(damaged);
        }
        return damaged;
    }

    private byte[] octets(byte[] good) {
        if (good.length == 0) { return new byte[]{(byte) random.nextInt()}; }
        int at = random.nextInt(good.length);
        byte[] bytes = good.clone();
        switch (random.nextInt(6)) {
            case 0 -> bytes = Arrays.copyOf(good, at);
            case 1 -> bytes[at] = (byte) random.nextInt();
            case 2 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
            case 3 -> Arrays.fill(bytes, at, Math.min(at + 5, bytes.length), (byte) random.nextInt());
            case 4 -> bytes = without(good, at, Math.min(good.length, at + 1 + random.nextInt(40)));
            default -> bytes = doubled(good, at, Math.min(good.length, at + 1 + random.nextInt(200)));
        }
        return bytes;
    }

    private static byte[] without(byte[] good, int from, int to) {
        byte[] bytes = Arrays.copyOf(good, good.length - (to - from));
        System.arraycopy(good, to, bytes, from, good.length - to);
        return bytes;
    }

    private static byte[] doubled(byte[] good, int from, int to) {
        byte[] bytes = Arrays.copyOf(good, good.length + to - from);
        System.arraycopy(good, from, bytes, to, good.length - from);
        return bytes;
    }

    /** Puts another word for one, or takes it out, or changes two, or a line. */
    private byte[] words(byte[] good) {
        String text = new String(good, UTF_8);
        if (random.nextInt(8) == 0) { return line(text).getBytes(UTF_8); }
        Matcher words = WORD.matcher(text);
        int count = (int) words.results().count();
        if (count == 0) { return octets(good); }
        int wanted = random.nextInt(count);
        words.reset();
        for (int i = 0; i <= wanted; i++) {
            words.find();
        }
        return (text.substring(0, words.start()) + other(words.group(), text) + text.substring(words.end()))
                .getBytes(UTF_8);
    }

    private String other(String word, String text) {
        if (random.nextInt(3) > 0) { return likely(word, text); }
        return switch (random.nextInt(10)) {
            case 0 -> "";
            case 1, 2 -> any(OTHERS);
            case 3 -> word + word;
            case 4 -> word.startsWith("\"") && word.length() > 3 ? "\"" + word.substring(2) : any(NUMBERS);
            case 5, 6 -> word.startsWith("\"") ? any(TEXTS) : any(NUMBERS);
            case 7 -> any(TEXTS);
            default -> any(NUMBERS);
        };
    }

    /** Another word that may well stand there, so that what is wrong is found late. */
    private String likely(String word, String text) {
        if (word.startsWith("\"")) {
            Matcher words = WORD.matcher(text);
            int from = random.nextInt(text.length());
            String other = word;
            for (int i = 0; i < 20 && words.find(i == 0 ? from : words.end()); i++) {
                if (words.group().startsWith("\"") && random.nextInt(3) == 0) { other = words.group(); }
            }
            return other;
        }
        return Character.isDigit(word.charAt(0))
                ? any(List.of("0", "1", "2", "3", "7", "12", "0.5", "40", "99", "2021", "0.01", "1000"))
                : word;
    }

    private String line(String text) {
        String[] lines = text.split("(?<=\n)", -1);
        int one = random.nextInt(lines.length);
        int two = random.nextInt(lines.length);
        String kept = lines[one];
        lines[one] = random.nextBoolean() ? "" : lines[two];
        lines[two] = random.nextBoolean() ? lines[two] : kept;
        return String.join("", lines);
    }

    private <T> T any(List<T> among) { return among.get(random.nextInt(among.size())); }
}
