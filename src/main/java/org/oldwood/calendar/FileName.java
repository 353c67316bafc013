package org.oldwood.calendar;

import java.text.Normalizer;

/** A name that every file system takes: lower-case letters a to z, digits, hyphens. */
final class FileName {
    private FileName() {}

    static String of(String name) {
        StringBuilder file = new StringBuilder();
        String plain = isPlain(name) ? name : Normalizer.normalize(name, Normalizer.Form.NFD);
        for (int i = 0; i < plain.length(); i++) {
            char c = Character.toLowerCase(plain.charAt(i));
            if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
                file.append(c);
            } else if (Character.getType(c) != Character.NON_SPACING_MARK
                    && !file.isEmpty()
                    && file.charAt(file.length() - 1) != '-') {
                file.append('-');
            }
        }
        while (!file.isEmpty() && file.charAt(file.length() - 1) == '-') {
            file.setLength(file.length() - 1);
        }
        return file.isEmpty() ? "garden" : file.toString();
    }

    private static boolean isPlain(String name) {
        return name.chars().allMatch(c -> c < 0x80);
    }
}
