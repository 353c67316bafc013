package org.oldwood.cli.command;

import picocli.CommandLine.Option;

/** The option of all commands that write a file. */
public final class Replacing {
    @Option(
            names = "--replace",
            description = "write over a file that this command did not write for this garden; never over the record")
    public boolean replace;
}
