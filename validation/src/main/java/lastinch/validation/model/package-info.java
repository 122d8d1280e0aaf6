/** Makes the demo models under {@code cases/demo/models}; every size in them is invented. */
package lastinch.validation.model;
