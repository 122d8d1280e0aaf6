/** Model files: STL, OBJ and 3MF read, welded and checked. Sizes are in the units of the file. */
package lastinch.cases.mesh;
