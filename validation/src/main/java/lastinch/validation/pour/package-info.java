/** Studies of whole dry pours with checking options, and trends with the catalogue's figures. */
package lastinch.validation.pour;
