package lastinch.ui.cli;

import picocli.CommandLine.Command;

/** The command above all commands. */
@Command(name = "lastinch", versionProvider = Version.class)
final class LastInch {}
