/**
 * Model files: read, merged, checked, laid into the mould.
 *
 * <p>{@code MeshFile} tells the kind by the content and calls {@code StlReader}, {@code ObjReader}
 * or {@code ThreeMfReader}, which fill a {@code TriangleSoup}; {@code VertexMerge} makes one point
 * of those on the same spot and gives a {@code Mesh}. {@code MeshChecks} says what is the matter
 * with it and turns its faces outwards. {@code ModelLook} is the whole way in one call, on to the
 * pose, the map and the stations of {@code lastinch.solver.geometry}.
 *
 * <p>Conventions: sizes are in the units of the file until {@code MeshUnit} is known, by the file,
 * by the case or by a {@code UnitAnswer}; then metres. What is no model ends in a {@code MeshError}
 * that names a sentence for the person, never in a fault, and every reader limits how much it
 * takes.
 */
package lastinch.cases.mesh;
