/** Studies of heat in mould and metal: the wall columns against exact solutions. */
package lastinch.validation.wall;
