/** Studies of flow, capillary push and air: the closures against closed forms. */
package lastinch.validation.flow;
