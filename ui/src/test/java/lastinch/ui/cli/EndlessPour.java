package lastinch.ui.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.ui.HandMade;

/** A program of its own whose pour goes on until somebody stops it. */
final class EndlessPour {
  private EndlessPour() {}

  /**
   * Pours.
   *
   * @param args file to make when pouring has begun; then the command line
   */
  public static void main(String[] args) {
    Path begun = Path.of(args[0]);
    Workshop endless =
        new Workshop() {
          @Override
          public ReadResult read(Path file, Optional<Path> ownMaterials) {
            return new Shop().read(file, ownMaterials);
          }

          @Override
          public Shelf shelf(Optional<Path> ownMaterials) {
            return new Shop().shelf(ownMaterials);
          }

          @Override
          public PourResult pour(
              PourCase pourCase, RunObserver observer, BooleanSupplier stopRequested) {
            begin(begun);
            while (!stopRequested.getAsBoolean()) {
              Thread.onSpinWait();
            }
            return HandMade.cancelled();
          }
        };
    String[] line = Arrays.copyOfRange(args, 1, args.length);
    System.exit(new Main(Console.ofProcess(), endless).run(line));
  }

  private static void begin(Path file) {
    try {
      Files.writeString(file, "begun");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
