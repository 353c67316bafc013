package org.oldwood.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Map;

/**
 * What a run of the program finds around it. Tests give their own.
 *
 * @param folder the current folder; relative names on the command line start here
 * @param environment the environment variables
 * @param in standard input
 * @param out standard output
 * @param err standard error
 */
record Surroundings(
        Path folder,
        Map<String, String> environment,
        InputStream in,
        OutputStream out,
        OutputStream err) {}
