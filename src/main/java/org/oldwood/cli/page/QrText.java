package org.oldwood.cli.page;

import io.nayuki.qrcodegen.QrCode;
import java.util.ArrayList;
import java.util.List;
import org.oldwood.sheet.Label;

/** QR codes (ISO/IEC 18004) for a terminal and for paper. */
final class QrText {
    /** Modules of light around the code in a terminal. */
    private static final int QUIET = 2;

    /** The same on paper, as the standard asks. */
    private static final int MARGIN = 4;

    private QrText() {}

    /** A label that holds a bush's id and nothing else; with a quarter of it muddy it is still read. */
    static Label label(String id, String words) {
        QrCode code = QrCode.encodeText(id, QrCode.Ecc.QUARTILE);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    path.append('M').append(x + MARGIN).append(' ').append(y + MARGIN).append("h1v1h-1z");
                }
            }
        }
        return new Label(id, words, code.size + 2 * MARGIN, path.toString());
    }

    /**
     * For a terminal, two rows of modules to a line: light modules are drawn, so that it reads on a dark ground too.
     */
    static List<String> lines(String text) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.LOW);
        List<String> lines = new ArrayList<>();
        for (int y = -QUIET; y < code.size + QUIET; y += 2) {
            StringBuilder line = new StringBuilder();
            for (int x = -QUIET; x < code.size + QUIET; x++) {
                boolean above = !code.getModule(x, y);
                boolean below = !code.getModule(x, y + 1);
                line.append(above ? (below ? '█' : '▀') : (below ? '▄' : ' '));
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
