package org.oldwood.cli.command;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * What a run of the program finds around it. Tests give their own.
 *
 * @param folder the current folder; relative names on the command line start here
 * @param in standard input
 * @param out standard output
 * @param err standard error
 * @param hidden whom to ask for a password
 */
public record Surroundings(Path folder, Map<String, String> environment, InputStream in, OutputStream out,
        OutputStream err, Hidden hidden) {

    /** Asks a person for a word that is not shown while it is typed. */
    public interface Hidden {
        /** Nobody is there to be asked. */
        Hidden NOBODY = question -> Optional.empty();

        /** The person at the terminal, if there is one. */
        Hidden TERMINAL = new Hidden() {
            @Override
            public boolean isThere() { return Optional.ofNullable(System.console()).isPresent(); }

            @Override
            public Optional<String> answerTo(String question) {
                return Optional.ofNullable(System.console()).map(console -> console.readPassword(question))
                        .map(String::new);
            }
        };

        /** The word; empty where there is nobody to ask, or no answer. */
        Optional<String> answerTo(String question);

        /** Whether somebody sits at a terminal, reads what is written and can answer. */
        default boolean isThere() {
            return false;
        }
    }
}
