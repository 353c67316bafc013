package org.oldwood.cli.page;

import io.nayuki.qrcodegen.QrCode;
import java.util.ArrayList;
import java.util.List;

/** QR codes (ISO/IEC 18004) in text, two rows of modules to a line. */
final class QrText {
    /** Modules of light around the code that readers need. */
    private static final int QUIET = 2;

    private QrText() {}

    /** For a terminal: light modules are drawn, so that it reads on a dark ground too. */
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
