/**
 * Reads the files of metals and mould media.
 *
 * <p>{@code Index} says which file holds a name. {@code MaterialsReader} reads a file by the rows
 * of {@code MaterialWords}, each a {@code Property} with its kind, unit and range, and gives a
 * {@code MaterialsFile} of {@code Entry}s; every value is a {@code Fact} with its {@code Origin},
 * and {@code Sources} says what its mark means. {@code RequiredFacts} asks for what is missing;
 * {@code AlloyMaker} and {@code MediumMaker} make the alloy or the medium of the solver.
 *
 * <p>Conventions: every fault is collected, none stops the rest. A value without basis is refused
 * in the catalogue; in a person's own file a plain value with a range is enough. An entry may be
 * based on another and then says only what differs. A new kind of value is a row in {@code
 * MaterialWords} and a line in a maker.
 */
package lastinch.cases.catalogue.read;
