/**
 * The plane solver: metal filling a thin cavity seen from above, depth-averaged, on a square grid.
 *
 * <p>Staggered grid: volumes and pressures in cells, speeds on faces; a cell has a gap and an open
 * area, a face an aperture. Free surface by straight cuts through cells, carried with the same
 * volumes as momentum, heat and dye. Pressure by conjugate gradients. Every wetted cell faces its
 * own column of mould.
 */
package lastinch.solver.plane;
