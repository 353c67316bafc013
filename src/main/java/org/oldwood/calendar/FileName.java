package org.oldwood.calendar;

import java.text.Normalizer;

/**
 * A name that every file system takes: lower-case letters a to z, digits, hyphens, not too long. What people called a
 * garden cannot lead out of the folder, nor be a name that some system keeps for itself, since a kind ({@code -events})
 * always follows.
 */
public final class FileName {
    /** Leaves room for a bed's id and the kind under the 255 octets that file systems take. */
    private static final int LONGEST = 80;

    /** How the files with what belongs to no bed are called. */
    private static final String NO_BED = "garden";

    private static final String BED = "bed-";

    private FileName() {}

    /** Of a garden, by its name. */
    public static String of(String name) {
        StringBuilder file = new StringBuilder();
        String plain = isPlain(name) ? name : Normalizer.normalize(name, Normalizer.Form.NFD);
        for (int i = 0; i < plain.length() && file.length() < LONGEST; i++) {
            char c = Character.toLowerCase(plain.charAt(i));
            if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
                file.append(c);
            } else if (Character.getType(c) != Character.NON_SPACING_MARK && !file.isEmpty()
                    && file.charAt(file.length() - 1) != '-') {
                file.append('-');
            }
        }
        while (!file.isEmpty() && file.charAt(file.length() - 1) == '-') {
            file.setLength(file.length() - 1);
        }
        return file.isEmpty() ? "garden" : file.toString();
    }

    /**
     * Of a bed, by its id, which is fit for a file already; no two beds share a name, and none has that of the tasks
     * without a bed.
     */
    static String ofBed(String id) {
        if (id.isEmpty()) { return NO_BED; }
        String bare = id.replaceFirst("^(" + BED + ")+", "");
        return bare.equals(NO_BED) ? BED + id : id;
    }

    private static boolean isPlain(String name) { return name.chars().allMatch(c -> c < 0x80); }
}
