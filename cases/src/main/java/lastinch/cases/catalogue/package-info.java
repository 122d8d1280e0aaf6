/**
 * Alloys, mould media and flask steels as data files, each value with its range, basis and source,
 * and a person's own files laid over them.
 *
 * <p>{@code Catalogue} is the door: it reads only the files that are asked for, and lays a person's
 * own over the built-in ones ({@code MaterialSet}). {@code CatalogueMaterials} answers a case file
 * by name or alias; {@code MaterialSheet} is all that is known of one material, for printing. The
 * files are read in {@code lastinch.cases.catalogue.read}.
 *
 * <p>Conventions: names are compared folded, and {@code NearestWord} helps with wrong ones. Nothing
 * in Java knows a particular alloy. To add one: {@code cases/docs/materials.md}.
 */
package lastinch.cases.catalogue;
