package org.oldwood.cli.command;

import java.util.Optional;

/** The person at the terminal, if there is one. */
public final class Terminal implements Surroundings.Hidden {
    @Override
    public boolean isThere() {
        return Optional.ofNullable(System.console()).isPresent();
    }

    @Override
    public Optional<String> answerTo(String question) {
        return Optional.ofNullable(System.console())
                .map(console -> console.readPassword(question))
                .map(String::new);
    }
}
