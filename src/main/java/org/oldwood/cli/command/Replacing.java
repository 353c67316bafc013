package org.oldwood.cli.command;

import picocli.CommandLine.Option;

/** The option of all commands that write a file. */
public final class Replacing {
    @Option(names = "--replace")
    public boolean replace;
}
